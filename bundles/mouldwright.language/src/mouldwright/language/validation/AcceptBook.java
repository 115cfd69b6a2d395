package mouldwright.language.validation;

import java.time.Clock;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import mouldwright.language.plan.Plans;
import mouldwright.model.Accept;
import mouldwright.model.Document;
import mouldwright.model.Plug;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/** What the plugs of a file accept, and which of it was found. Errors cannot be accepted; anything else can, with a reason, while its day has not passed. */
public final class AcceptBook {

	private final List<Plug> plugs;
	private final LocalDate today;
	private final Set<Accept> met = new HashSet<>();

	private AcceptBook(List<Plug> plugs, LocalDate today) {
		this.plugs = plugs;
		this.today = today;
	}

	/** The book of a file, in which nothing was met yet.
	 *  @param clock says whether the day of an acceptance has passed */
	public static AcceptBook of(Resource resource, Clock clock) {
		boolean spec = !resource.getContents().isEmpty() && resource.getContents().get(0) instanceof Document;
		return new AcceptBook(spec ? Plans.plugs((Document) resource.getContents().get(0)) : List.of(), LocalDate.now(clock));
	}

	/** Whether a finding of a plug is accepted there; whatever speaks of it is met.
	 *  @param error whether it is one */
	boolean accepts(Plug plug, String code, boolean error) {
		List<Accept> about = plug.getAccepts().stream().filter(accept -> code.equals(accept.getCode())).toList();
		met.addAll(about);
		return !error && about.stream().anyMatch(accept -> !isOver(accept));
	}

	/** Whether a finding at a place of the text is accepted: by the plug it stands in, or by any where it stands in none, as a material does.
	 *  @param offset in the text of the file
	 *  @param error  whether it is one */
	boolean acceptsAt(int offset, String code, boolean error) {
		List<Plug> around = plugs.stream().filter(plug -> holds(plug, offset)).toList();
		return accepts(around.isEmpty() ? plugs : around, code, error);
	}

	/** Whether a finding outside the file, in a library it uses, is accepted by one of its plugs.
	 *  @param error whether it is one */
	public boolean acceptsElsewhere(String code, boolean error) {
		return accepts(plugs, code, error);
	}

	private boolean accepts(List<Plug> some, String code, boolean error) {
		boolean accepted = false;
		for (Plug plug : some)
			accepted |= accepts(plug, code, error);
		return accepted;
	}

	/** Whether something was found that it speaks of. */
	boolean isMet(Accept accept) {
		return met.contains(accept);
	}

	/** Whether its day has passed. One that is no day is told as such, and never passes. */
	boolean isOver(Accept accept) {
		return accept.getUntil() != null && WordChecks.exists(accept.getUntil()) && LocalDate.parse(accept.getUntil()).isBefore(today);
	}

	private static boolean holds(Plug plug, int offset) {
		ICompositeNode node = NodeModelUtils.findActualNodeFor(plug);
		return node != null && node.getOffset() <= offset && offset < node.getEndOffset();
	}
}
