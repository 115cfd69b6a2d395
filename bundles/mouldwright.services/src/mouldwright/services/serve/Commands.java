package mouldwright.services.serve;

import com.google.gson.JsonElement;
import com.google.gson.JsonParser;
import com.google.gson.JsonPrimitive;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import mouldwright.plan.BuildPlan;
import mouldwright.project.SafeWrite;
import mouldwright.project.WriteResult;
import mouldwright.report.CsvReport;
import mouldwright.report.Estimate;
import mouldwright.report.Explanation;
import mouldwright.report.JsonReport;
import mouldwright.report.PathNames;
import mouldwright.report.TextReport;
import mouldwright.services.Checked;
import mouldwright.services.LiveSession;
import mouldwright.units.UnitSystem;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;

/** Commands of our own. Each takes the file's URI first, then the plug's name, which may be empty where there is one plug. */
final class Commands {

    /** The estimate as the JSON object of the command line: URI, plug. */
    static final String PLAN = "mouldwright.plan";
    /** How a quantity came about, as text: URI, plug, id. */
    static final String EXPLAIN = "mouldwright.explain";
    /** Writes the estimate beside the spec: URI, plug, text, json or csv, file inside the project. Answers the file's URI. */
    static final String EXPORT = "mouldwright.export";

    static final List<String> ALL = List.of(PLAN, EXPLAIN, EXPORT);

    private final LiveSession session;

    Commands(LiveSession session) {
        this.session = session;
    }

    CompletableFuture<Object> execute(ExecuteCommandParams params) {
        List<String> arguments = params.getArguments() == null ? List.of() : params.getArguments().stream().map(Commands::text).toList();
        if (!ALL.contains(params.getCommand())) {
            return CompletableFuture.failedFuture(refusal(ResponseErrorCode.InvalidParams, "no command `" + params.getCommand() + "`"));
        }
        Optional<Path> file = arguments.isEmpty() ? Optional.empty() : Uris.path(arguments.getFirst());
        if (file.isEmpty()) {
            return CompletableFuture.failedFuture(refusal(ResponseErrorCode.InvalidParams, params.getCommand() + " takes the URI of a file first"));
        }
        if (session.text(file.get()).isEmpty()) {
            return CompletableFuture.failedFuture(refusal(ResponseErrorCode.RequestFailed, file.get().getFileName() + " is not open"));
        }
        return session.checked(file.get()).thenApply(checked -> answer(params.getCommand(), checked, arguments));
    }

    private static Object answer(String command, Checked checked, List<String> arguments) {
        BuildPlan plan = plan(checked, argument(arguments, 1));
        Estimate estimate = Estimate.of(plan, checked.revision(), checked.findings());
        return switch (command) {
            case EXPLAIN -> {
                String id = argument(arguments, 2);
                yield new Explanation(UnitSystem.METRIC).print(plan, id).orElseThrow(() -> refusal(ResponseErrorCode.RequestFailed, "no quantity `" + id + "` in this plan"));
            }
            case EXPORT -> export(print(estimate, argument(arguments, 2), checked), checked, argument(arguments, 3));
            default -> JsonParser.parseString(print(estimate, "json", checked));
        };
    }

    private static BuildPlan plan(Checked checked, String plug) {
        if (checked.plans().isEmpty()) {
            throw refusal(ResponseErrorCode.RequestFailed, checked.hasErrors() ? "the spec has errors; they are among its findings" : "there is no plug in this file");
        }
        if (plug.isEmpty() && checked.plans().size() > 1) {
            throw refusal(ResponseErrorCode.RequestFailed, "several plugs in this file: say which of " + String.join(", ", checked.plans().keySet()));
        }
        BuildPlan plan = plug.isEmpty() ? checked.plans().values().iterator().next() : checked.plans().get(plug);
        if (plan == null) {
            throw refusal(ResponseErrorCode.RequestFailed, "no plug is called `" + plug + "`");
        }
        return plan;
    }

    private static String print(Estimate estimate, String format, Checked checked) {
        PathNames names = new PathNames(checked.project().root());
        return switch (format) {
            case "json" -> new JsonReport(names).print(estimate);
            case "csv" -> new CsvReport().print(estimate);
            case "text", "" -> new TextReport(UnitSystem.METRIC, names).print(estimate);
            default -> throw refusal(ResponseErrorCode.InvalidParams, "`" + format + "` is none of text, json, csv");
        };
    }

    /** Nothing is written outside the project, and no spec is written over. */
    private static String export(String text, Checked checked, String written) {
        Path file;
        try {
            file = checked.file().getParent().resolve(written).normalize();
        } catch (InvalidPathException e) {
            throw refusal(ResponseErrorCode.InvalidParams, "no path: " + written);
        }
        if (written.isEmpty() || !file.startsWith(checked.project().root()) || file.equals(checked.project().root())) {
            throw refusal(ResponseErrorCode.RequestFailed, "\"" + written + "\" does not lie in the project");
        }
        if (file.toString().endsWith(".plug") || file.getFileName().toString().equals("mouldwright.project")) {
            throw refusal(ResponseErrorCode.RequestFailed, "the export would write over a spec: " + file.getFileName());
        }
        return switch (SafeWrite.text(file, text)) {
            case WriteResult.Written done -> Uris.of(file);
            case WriteResult.NotWritten(Path place, String message) -> throw refusal(ResponseErrorCode.RequestFailed, file.getFileName() + " is not written: " + message);
        };
    }

    private static String argument(List<String> arguments, int index) {
        return index < arguments.size() ? arguments.get(index) : "";
    }

    private static String text(Object argument) {
        return switch (argument) {
            case JsonPrimitive primitive -> primitive.getAsString();
            case JsonElement other -> other.toString();
            case null -> "";
            default -> argument.toString();
        };
    }

    private static ResponseErrorException refusal(ResponseErrorCode code, String message) {
        return new ResponseErrorException(new ResponseError(code, message, null));
    }
}
