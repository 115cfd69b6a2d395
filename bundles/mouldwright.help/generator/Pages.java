import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.ext.heading.anchor.HeadingAnchorExtension;
import org.commonmark.Extension;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * Makes the pages of the help, at build time, of the pages written by hand and the references generated from the code.
 *
 * <p>Arguments: the folder of this bundle. Run as a single source file with commonmark in the class path.
 */
public final class Pages {

    /** Where each page comes from, seen from this bundle, in the order of the margin. */
    private static final Map<String, String> SOURCES = sources();
    private static final List<Extension> EXTENSIONS = List.of(TablesExtension.create(), HeadingAnchorExtension.create());
    private static final Parser PARSER = Parser.builder().extensions(EXTENSIONS).build();
    private static final HtmlRenderer RENDERER = HtmlRenderer.builder().extensions(EXTENSIONS).escapeHtml(true).build();

    private Pages() { }

    private static Map<String, String> sources() {
        Map<String, String> sources = new LinkedHashMap<>();
        sources.put("index", "pages/index.md");
        sources.put("first-plug", "pages/first-plug.md");
        sources.put("job", "pages/job.md");
        sources.put("language", "../mouldwright.language/reference/language.md");
        sources.put("checks", "../mouldwright.check/reference/checks.md");
        sources.put("commands", "../mouldwright.cli/reference/commands.md");
        sources.put("files", "pages/files.md");
        sources.put("safety", "pages/safety.md");
        sources.put("troubleshooting", "pages/troubleshooting.md");
        sources.put("glossary", "pages/glossary.md");
        return sources;
    }

    public static void main(String[] arguments) throws IOException {
        Path bundle = Path.of(arguments[0]);
        Path html = bundle.resolve("html");
        Files.createDirectories(html);
        Files.copy(bundle.resolve("pages/style.css"), html.resolve("style.css"), StandardCopyOption.REPLACE_EXISTING);
        Map<String, String> titles = new LinkedHashMap<>();
        for (Map.Entry<String, String> source : SOURCES.entrySet()) {
            titles.put(source.getKey(), title(Files.readString(bundle.resolve(source.getValue()))));
        }
        for (Map.Entry<String, String> source : SOURCES.entrySet()) {
            Node page = PARSER.parse(Files.readString(bundle.resolve(source.getValue())));
            Files.writeString(html.resolve(source.getKey() + ".html"), page(source.getKey(), titles, RENDERER.render(page)));
        }
    }

    private static String title(String markdown) {
        return markdown.lines().filter(line -> line.startsWith("# ")).findFirst().orElseThrow().substring(2);
    }

    private static String page(String name, Map<String, String> titles, String body) {
        StringBuilder margin = new StringBuilder();
        titles.forEach((other, title) -> margin.append("<a href=\"").append(other).append(".html\"").append(other.equals(name) ? " aria-current=\"page\"" : "").append('>')
                .append(title).append("</a>\n"));
        return """
                <!DOCTYPE html>
                <html lang="en">
                <head>
                <meta charset="utf-8">
                <meta name="viewport" content="width=device-width, initial-scale=1">
                <title>%s</title>
                <link rel="stylesheet" href="style.css">
                </head>
                <body>
                <nav aria-label="Pages">
                %s</nav>
                <main>
                %s</main>
                </body>
                </html>
                """.formatted(titles.get(name) + (name.equals("index") ? "" : " - Mouldwright"), margin, body.replace("<table>", "<div class=\"wide\"><table>").replace("</table>", "</table></div>"));
    }
}
