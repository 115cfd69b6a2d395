package mouldwright.exchange.drawing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Programs that are no part of this project: ezdxf writes and flattens drawings, GDAL reads them. */
final class Outside {

    private static final Path SCRIPT = Path.of("resources/drawings/sections.py").toAbsolutePath();
    private static final Pattern ENTITY = Pattern.compile("Layer \\(String\\) = (\\S+)|LINESTRING (?:Z )?\\(([^)]*)\\)");

    private Outside() { }

    /** A drawing and the places its lines go through, by layer. */
    record Drawn(Path file, String text, Map<String, List<Point>> places) { }

    /** Has ezdxf write a drawing. */
    static Drawn drawn(Path folder) {
        Path drawing = folder.resolve("sections.dxf"), points = folder.resolve("points.csv");
        run(folder, "/usr/bin/python3", SCRIPT.toString(), drawing.toString(), points.toString());
        Map<String, List<Point>> places = new LinkedHashMap<>();
        read(points).lines().map(line -> line.split(",")).forEach(cells -> places.computeIfAbsent(cells[0], layer -> new ArrayList<>())
                .add(new Point(Double.parseDouble(cells[1]), Double.parseDouble(cells[2]))));
        return new Drawn(drawing, read(drawing), places);
    }

    /** What GDAL takes the lines of a drawing to be. */
    static Map<String, List<Point>> byGdal(Path folder, Path drawing) {
        Map<String, List<Point>> places = new LinkedHashMap<>();
        String layer = "";
        Matcher match = ENTITY.matcher(run(folder, "ogrinfo", "-ro", "-al", drawing.toString()));
        while (match.find())
            if (match.group(1) != null)
                layer = match.group(1);
            else
                for (String place : match.group(2).split(",")) {
                    String[] figures = place.strip().split(" ");
                    places.computeIfAbsent(layer, name -> new ArrayList<>()).add(new Point(Double.parseDouble(figures[0]), Double.parseDouble(figures[1])));
                }
        return places;
    }

    private static String run(Path folder, String... command) {
        try {
            Path out = Files.createTempFile(folder, "out", ".txt");
            Path err = Files.createTempFile(folder, "err", ".txt"); // GDAL complains there of splines without control points, and goes on
            int code = new ProcessBuilder(command).redirectError(err.toFile()).redirectOutput(out.toFile()).start().waitFor();
            if (code != 0)
                throw new IllegalStateException(String.join(" ", command) + ": " + read(err));
            return read(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
