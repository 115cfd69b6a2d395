package mouldwright.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import mouldwright.units.UnitSystem;
import org.dhatim.fastexcel.BorderSide;
import org.dhatim.fastexcel.BorderStyle;
import org.dhatim.fastexcel.PaperSize;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * An estimate as a workbook (Office Open XML, ECMA-376): a sheet of all quantities, then one sheet for every table of the estimate. A number is
 * a number in full, shown with its decimals; a unit stands in a column or under a head; a day is a day. Words that a spreadsheet might take for a
 * formula are stored as words and get an apostrophe besides, since they would come to life on the way through a text file.
 */
public final class XlsxReport {

    private static final int NAME_AT_MOST = 31;
    private static final int WIDTH_AT_MOST = 60;
    private static final String PAPER = "F4EEDF";

    private final UnitSystem system;
    private final PathNames names;

    /** @param system family of units the figures are shown in
     *  @param names  how files are named in findings */
    public XlsxReport(UnitSystem system, PathNames names) {
        this.system = system;
        this.names = names;
    }

    /** The whole file. */
    public byte[] print(Estimate estimate) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            Workbook book = new Workbook(bytes, "Mouldwright", null);
            List<String> taken = new ArrayList<>();
            for (Table table : tables(estimate)) {
                sheet(book.newWorksheet(sheetName(table.name(), taken)), table);
            }
            book.finish();
            return Archive.again(bytes.toByteArray(), XlsxReport::withoutDates);
        } catch (IOException e) {
            throw new UncheckedIOException(e); // it writes to memory
        }
    }

    private List<Table> tables(Estimate estimate) {
        EstimatePaper paper = new EstimatePaper(estimate, system, names);
        List<Table> tables = new ArrayList<>(List.of(about(estimate), paper.quantities()));
        for (Section section : paper.stages()) {
            section.tables().stream().filter(table -> !table.name().startsWith("figures ")).forEach(tables::add);
            section.blocks().stream().filter(Block.Steps.class::isInstance).map(Block.Steps.class::cast).forEach(steps -> tables.add(steps(section, steps)));
        }
        tables.addAll(paper.findings().tables());
        tables.addAll(paper.assumed().tables());
        return tables;
    }

    private static Table about(Estimate estimate) {
        Table table = new Table("about", "About").words("about").words("");
        table.row(List.of("plug", estimate.plan().plug()));
        estimate.plan().spec().title().ifPresent(title -> table.row(List.of("title", title)));
        table.row(List.of("revision", estimate.revision()));
        table.row(List.of("findings", FindingsText.summary(estimate.findings())));
        estimate.cautions().forEach(caution -> table.row(List.of("caution", caution.words())));
        table.row(List.of("caution", Caution.DEFERENCE));
        return table;
    }

    private static Table steps(Section section, Block.Steps steps) {
        Table table = new Table(section.name() + " order", steps.title()).figures("step").words("what to do");
        for (String words : steps.words()) {
            table.row(Cell.of(table.rows().size() + 1), Cell.of(words));
        }
        return table;
    }

    /** Names of sheets differ by more than their case and carry none of the characters a reference to a cell is made of. */
    private static String sheetName(String name, List<String> taken) {
        String plain = name.replaceAll("[\\[\\]:*?/\\\\']", " ").strip();
        String stem = plain.length() <= NAME_AT_MOST ? plain : plain.substring(0, NAME_AT_MOST).strip();
        String free = stem;
        for (int n = 2; taken.contains(free.toLowerCase(Locale.ROOT)); n++) {
            String tail = " " + n;
            free = stem.substring(0, Math.min(stem.length(), NAME_AT_MOST - tail.length())) + tail;
        }
        taken.add(free.toLowerCase(Locale.ROOT));
        return free;
    }

    private static void sheet(Worksheet sheet, Table table) {
        List<Table.Column> columns = table.columns();
        boolean units = columns.stream().anyMatch(column -> !column.unit().isEmpty());
        int heads = units ? 2 : 1;
        for (int c = 0; c < columns.size(); c++) {
            head(sheet, 0, c, columns.get(c).head(), columns.get(c));
            if (units) {
                head(sheet, 1, c, columns.get(c).unit(), columns.get(c));
            }
            sheet.width(c, width(table, c));
        }
        for (int r = 0; r < table.rows().size(); r++) {
            for (int c = 0; c < columns.size(); c++) {
                cell(sheet, r + heads, c, table.rows().get(r).cells().get(c), columns.get(c));
            }
        }
        sheet.freezePane(columns.getFirst().figures() ? 0 : 1, heads);
        sheet.repeatRows(0, heads - 1);
        sheet.paperSize(PaperSize.A4_PAPER);
        sheet.pageOrientation("landscape");
        sheet.fitToWidth((short) 1);
        sheet.fitToHeight((short) 0);
    }

    private static void head(Worksheet sheet, int row, int column, String words, Table.Column of) {
        sheet.inlineString(row, column, CellText.harmless(words));
        sheet.style(row, column).bold().fillColor(PAPER).horizontalAlignment(of.figures() ? "right" : "left").borderStyle(BorderSide.BOTTOM, BorderStyle.THIN).set();
    }

    private static void cell(Worksheet sheet, int row, int column, Cell cell, Table.Column of) {
        switch (cell) {
            case Cell.Number(double value, int decimals, String text) -> {
                sheet.value(row, column, value);
                sheet.style(row, column).format(decimals == 0 ? "0" : "0." + "0".repeat(decimals)).set();
            }
            case Cell.Day(var date) -> {
                sheet.value(row, column, date);
                sheet.style(row, column).format("yyyy-mm-dd").horizontalAlignment("left").set();
            }
            case Cell.Words(String words) -> {
                if (!words.isEmpty()) {
                    sheet.inlineString(row, column, CellText.harmless(words));
                    sheet.style(row, column).horizontalAlignment(of.figures() ? "right" : "left").verticalAlignment("top").wrapText(words.length() > WIDTH_AT_MOST).set();
                }
            }
        }
    }

    private static double width(Table table, int column) {
        int widest = Math.max(table.columns().get(column).head().length(), table.columns().get(column).unit().length());
        for (Table.Row row : table.rows()) {
            widest = Math.max(widest, row.cells().get(column).text().length());
        }
        return Math.clamp(widest + 2, 6, WIDTH_AT_MOST + 4);
    }

    /** Nobody asks when it was made; the revision says of what. */
    private static byte[] withoutDates(String name, byte[] content) {
        if (!name.equals("docProps/core.xml")) {
            return content;
        }
        return new String(content, StandardCharsets.UTF_8).replaceAll("(?s)<dcterms:(created|modified)[^>]*>.*?</dcterms:\\1>", "")
                .getBytes(StandardCharsets.UTF_8);
    }
}
