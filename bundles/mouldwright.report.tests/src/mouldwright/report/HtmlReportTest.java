package mouldwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import mouldwright.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The page of an estimate, read by the parser of XML that comes with Java. */
class HtmlReportTest {

    private static final String PAGE = print(UnitSystem.METRIC, Plans.estimate());

    private static String print(UnitSystem system, Estimate estimate) {
        return new HtmlReport(system, new PathNames(Plans.FOLDER)).print(estimate);
    }

    private static Document read(String page) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(page)));
    }

    private static List<Element> all(Document page, String tag) {
        NodeList found = page.getElementsByTagName(tag);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    @Test void aPageIsWellFormedAndNamesItsLanguageAndItsParts() throws Exception { // WCAG 2.2, 3.1.1 and 1.3.1
        Document page = read(PAGE);
        assertThat(page.getDocumentElement().getAttribute("lang")).isEqualTo("en");
        assertThat(all(page, "title").stream().filter(title -> title.getParentNode().getNodeName().equals("head"))).singleElement().matches(title -> title.getTextContent().equals("Hatch, build plan, revision " + Plans.REVISION));
        for (String landmark : List.of("header", "nav", "main", "footer", "h1")) {
            assertThat(all(page, landmark)).as(landmark).hasSize(1);
        }
    }

    @Test void everyHeadOfATableSaysWhatItHeads() throws Exception { // WCAG technique H63
        assertThat(all(read(PAGE), "th")).isNotEmpty().allMatch(head -> Set.of("col", "row").contains(head.getAttribute("scope")));
        assertThat(all(read(PAGE), "caption")).hasSameSizeAs(all(read(PAGE), "table"));
    }

    @Test void everyRowHasACellForEachColumn() throws Exception {
        for (Element table : all(read(PAGE), "table")) {
            Set<Integer> counts = new TreeSet<>();
            NodeList rows = table.getElementsByTagName("tr");
            for (int i = 0; i < rows.getLength(); i++) {
                Element row = (Element) rows.item(i);
                counts.add(row.getElementsByTagName("th").getLength() + row.getElementsByTagName("td").getLength());
            }
            assertThat(counts).hasSize(1);
        }
    }

    @Test void everyLinkLeadsToAPlaceOnThePageAndNoPlaceIsThereTwice() throws Exception {
        Document page = read(PAGE);
        List<String> places = new ArrayList<>();
        NodeList every = page.getElementsByTagName("*");
        for (int i = 0; i < every.getLength(); i++) {
            String id = ((Element) every.item(i)).getAttribute("id");
            if (!id.isEmpty()) {
                places.add(id);
            }
        }
        assertThat(places).doesNotHaveDuplicates();
        assertThat(all(page, "a")).extracting(link -> link.getAttribute("href")).isNotEmpty().allMatch(href -> places.contains(href.substring(1)));
    }

    @Test void thePlugIsToBeSeenOnThePage() throws Exception { // each drawing named for those who cannot see it: WCAG 2.2, 1.1.1
        assertThat(all(read(PAGE), "figure")).isNotEmpty().allSatisfy(figure -> {
            assertThat(figure.getElementsByTagName("path").getLength()).isPositive();
            assertThat(figure.getElementsByTagName("desc").item(0).getTextContent()).isNotBlank();
        });
    }

    @Test void aPageNeedsNothingBesideIt() {
        assertThat(PAGE).doesNotContain("<script", "<link", "<img", "src=", "@import").doesNotContainPattern("url\\((?!#)");
    }

    @Test void aFigureTellsHowItCameAbout() {
        assertThat(PAGE).contains("<summary>Foam, liquid</summary>", "cavity / (expansion * yield)", "expansion as the supplier states it",
                "<a href=\"#q-fill.cavity\">Cavity, overfill included</a>", "stock.foam Pour36, stock/foam.plug:14", "assumed: common practice at 20 degC");
    }

    @Test void findingsStandThereWithTheirFix() {
        assertThat(PAGE).contains("MW412", "hatch.plug:3:5", "insert a station at 823 mm with the lofted section", "1 warning.");
    }

    @Test void wherePotsAreShownTheCautionStandsBesideThem() {
        assertThat(PAGE).contains("isocyanate", "peroxide", "local codes and licensed practice");
    }

    @Test void whatANameSaysIsShownAndNeverObeyed() throws Exception {
        String page = print(UnitSystem.METRIC, Estimate.of(Plans.single("x", "<script>alert('x')</script> & \"more\"", 1, OptionalDouble.empty()), "r", List.of()));
        assertThat(page).doesNotContain("<script").contains("&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt; &amp; &quot;more&quot;");
        assertThat(all(read(page), "summary")).extracting(Element::getTextContent).contains("<script>alert('x')</script> & \"more\"");
    }

    @Test void figuresMayBeInUsUnits() {
        assertThat(print(UnitSystem.US, Plans.estimate())).contains("19.7").contains(">in<"); // 500 mm
    }

    @Test void inkStandsOutFromPaperByDayByNightAndInPrint() { // WCAG 2.2, 1.4.3: 4.5 to 1, reckoned as it states
        Matcher grounds = Pattern.compile(":root \\{ (--paper[^}]*)").matcher(PAGE);
        int read = 0;
        while (grounds.find()) {
            Map<String, String> colours = new TreeMap<>();
            Matcher colour = Pattern.compile("--(\\w+): #([0-9a-f]{3,6})").matcher(grounds.group(1));
            while (colour.find()) {
                colours.put(colour.group(1), colour.group(2));
            }
            for (String ink : List.of("ink", "soft", "blue")) {
                for (String ground : List.of("paper", "wash")) {
                    assertThat(contrast(colours.get(ink), colours.get(ground))).as(ink + " on " + ground + " " + colours).isGreaterThanOrEqualTo(4.5);
                }
            }
            read++;
        }
        assertThat(read).isEqualTo(3);
    }

    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String hex) {
        String full = hex.length() == 3 ? hex.replaceAll("(.)", "$1$1") : hex;
        double[] weights = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            double c = Integer.parseInt(full.substring(2 * i, 2 * i + 2), 16) / 255.0;
            sum += weights[i] * (c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
        }
        return sum;
    }

    @Test void theSameEstimateGivesTheSamePage() {
        assertThat(print(UnitSystem.METRIC, Plans.estimate())).isEqualTo(PAGE);
    }
}
