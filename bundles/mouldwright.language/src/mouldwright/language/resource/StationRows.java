package mouldwright.language.resource;

import java.util.List;
import mouldwright.model.Document;
import mouldwright.model.Plug;
import mouldwright.model.PlugFactory;
import mouldwright.model.Station;
import mouldwright.model.StationRow;
import org.eclipse.xtext.resource.DerivedStateAwareResource;
import org.eclipse.xtext.resource.IDerivedStateComputer;

/** Gives the stations of a row ({@code stations R1 to R3 ...}) their names, so that they can be referred to. */
public class StationRows implements IDerivedStateComputer {

	@Override
	public void installDerivedState(DerivedStateAwareResource resource, boolean preLinkingPhase) {
		rows(resource).forEach(row -> {
			for (String name : RowNames.between(row.getFirst(), row.getLast())) {
				Station station = PlugFactory.eINSTANCE.createStation();
				station.setName(name);
				row.getStations().add(station);
			}
		});
	}

	@Override
	public void discardDerivedState(DerivedStateAwareResource resource) {
		rows(resource).forEach(row -> row.getStations().clear());
	}

	private static List<StationRow> rows(DerivedStateAwareResource resource) {
		if (resource.getContents().isEmpty() || !(resource.getContents().get(0) instanceof Document document))
			return List.of();
		return document.getDeclarations().stream().filter(Plug.class::isInstance).map(Plug.class::cast).flatMap(plug -> plug.getStations().stream())
				.filter(StationRow.class::isInstance).map(StationRow.class::cast).toList();
	}
}
