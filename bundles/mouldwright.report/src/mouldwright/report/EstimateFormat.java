package mouldwright.report;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import mouldwright.units.UnitSystem;

/**
 * A format an estimate is written in. A new one is one class and one line in {@link #ALL}.
 *
 * @param name     as people ask for it
 * @param binary   whether a terminal cannot show it
 * @param speaks   whether cautions and findings stand in it; where not, whoever writes it prints them beside
 * @param writer   writes it
 */
public record EstimateFormat(String name, boolean binary, boolean speaks, Writer writer) {

    /** Writes an estimate. */
    public interface Writer {
        /** The whole file.
         *  @param system family of units the figures are shown in; files for other programs keep to SI
         *  @param names  how files are named in findings */
        byte[] write(Estimate estimate, UnitSystem system, PathNames names);
    }

    /** All of them, that for a terminal first. */
    public static final List<EstimateFormat> ALL = List.of(
            new EstimateFormat("text", false, true, (estimate, system, names) -> utf8(new TextReport(system, names).print(estimate))),
            new EstimateFormat("json", false, true, (estimate, system, names) -> utf8(new JsonReport(names).print(estimate))),
            new EstimateFormat("csv", false, false, (estimate, system, names) -> utf8(new CsvReport().print(estimate))),
            new EstimateFormat("html", false, true, (estimate, system, names) -> utf8(new HtmlReport(system, names).print(estimate))),
            new EstimateFormat("pdf", true, true, (estimate, system, names) -> new PdfReport(system, names).print(estimate)),
            new EstimateFormat("xlsx", true, true, (estimate, system, names) -> new XlsxReport(system, names).print(estimate)));

    /** The format of a name. */
    public static Optional<EstimateFormat> find(String name) {
        return ALL.stream().filter(format -> format.name().equals(name)).findFirst();
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
