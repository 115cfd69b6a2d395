package mouldwright.language.validation;

import java.util.Map;
import java.util.TreeMap;
import mouldwright.model.Point;
import mouldwright.model.PlugPackage;
import mouldwright.model.Station;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.validation.Check;

/** A point's two values stand on one line; where a value is left out in two places the pairs would silently shift. */
public class PointChecks extends Concern {

	static final String ODD = "MW901";

	@Check
	public void twoValuesALine(Station station) {
		Map<Integer, Integer> values = new TreeMap<>();
		boolean acrossLines = false;
		for (Point point : station.getPoints()) {
			int y = line(point.getY());
			int z = line(point.getZ());
			if (y == 0 || z == 0)
				return;
			values.merge(y, 1, Integer::sum);
			values.merge(z, 1, Integer::sum);
			acrossLines |= y != z;
		}
		if (!acrossLines)
			return;
		for (Point point : station.getPoints()) {
			int line = values.get(line(point.getY())) % 2 != 0 ? line(point.getY()) : values.get(line(point.getZ())) % 2 != 0 ? line(point.getZ()) : 0;
			if (line == 0)
				continue;
			boolean first = line == line(point.getY());
			fault("a point is two values: half-breadth and height; this line has " + values.get(line), point,
					first ? PlugPackage.Literals.POINT__Y : PlugPackage.Literals.POINT__Z, ODD);
			return;
		}
	}

	private static int line(EObject amount) {
		ICompositeNode node = amount == null ? null : NodeModelUtils.getNode(amount);
		return node == null ? 0 : node.getStartLine();
	}
}
