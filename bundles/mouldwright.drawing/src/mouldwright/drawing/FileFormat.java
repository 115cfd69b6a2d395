package mouldwright.drawing;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How drawings are written to files. A new format is one constant here. */
public enum FileFormat {

    /** For machines and CAD: one file a drawing. */
    DXF {
        @Override public List<NamedFile> write(String title, List<NamedDrawing> drawings, Print print) {
            return each(drawings, "dxf", drawing -> DxfWriter.write(drawing).getBytes(StandardCharsets.US_ASCII));
        }
    },
    /** For browsers and drawing programs: one file a drawing. */
    SVG {
        @Override public List<NamedFile> write(String title, List<NamedDrawing> drawings, Print print) {
            return each(drawings, "svg", drawing -> SvgWriter.file(drawing, Palette.PAPER).getBytes(StandardCharsets.UTF_8));
        }
    },
    /** For printers: all drawings in one file. */
    PDF {
        @Override public List<NamedFile> write(String title, List<NamedDrawing> drawings, Print print) {
            List<Drawing> all = drawings.stream().map(NamedDrawing::drawing).toList();
            byte[] bytes = print.paper().map(paper -> new PdfWriter(paper, print.correction(), print.code()).write(title, all)).orElseGet(() -> PdfWriter.pages(title, all));
            return List.of(new NamedFile(safe(title) + ".pdf", bytes));
        }
    };

    /** A drawing and the name of its file, without ending. */
    public record NamedDrawing(String name, Drawing drawing) { }

    /** A file to be written. @param bytes the receiver may keep them */
    public record NamedFile(String name, byte[] bytes) { }

    /** How it is printed.
     *  @param paper      it is cut up for; empty for pages as large as the drawings
     *  @param correction by which all is enlarged, see {@link PdfWriter}
     *  @param code of plug and revision */
    public record Print(Optional<Paper> paper, double correction, String code) { }

    /** Writes drawings. The same drawings give the same bytes. */
    public abstract List<NamedFile> write(String title, List<NamedDrawing> drawings, Print print);

    /** Why drawings cannot be written this way; empty where they can. */
    public Optional<PdfWriter.TooLarge> refused(List<NamedDrawing> drawings, Print print) {
        return this != PDF ? Optional.empty() : print.paper().flatMap(paper -> PdfWriter.tooLarge(drawings.stream().map(NamedDrawing::drawing).toList(), paper, print.correction()));
    }

    private interface Writer {
        byte[] write(Drawing drawing);
    }

    private static List<NamedFile> each(List<NamedDrawing> drawings, String ending, Writer writer) {
        List<NamedFile> files = new ArrayList<>();
        for (NamedDrawing one : drawings)
            files.add(new NamedFile(safe(one.name()) + "." + ending, writer.write(one.drawing())));
        return files;
    }

    /** A name any file system takes: letters, figures, points and dashes. */
    static String safe(String name) {
        String safe = name.replaceAll("[^\\p{L}\\p{N}._-]+", "-").replaceAll("^[.-]+", "");
        return safe.isEmpty() ? "drawing" : safe.length() > 100 ? safe.substring(0, 100) : safe;
    }

    /** The format of that name. */
    public static FileFormat named(String name) {
        return valueOf(name.toUpperCase(Locale.ROOT));
    }
}
