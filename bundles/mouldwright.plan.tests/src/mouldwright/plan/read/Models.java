package mouldwright.plan.read;

import mouldwright.model.Amount;
import mouldwright.model.Binary;
import mouldwright.model.Bracket;
import mouldwright.model.Document;
import mouldwright.model.Foam;
import mouldwright.model.Let;
import mouldwright.model.LetReference;
import mouldwright.model.LibraryHeader;
import mouldwright.model.Mat;
import mouldwright.model.Measure;
import mouldwright.model.Operator;
import mouldwright.model.Plug;
import mouldwright.model.PlugFactory;
import mouldwright.model.Point;
import mouldwright.model.Range;
import mouldwright.model.Resin;
import mouldwright.model.Station;

/** Models for tests, as the parser would make them. */
final class Models {

    static final PlugFactory F = PlugFactory.eINSTANCE;

    private Models() { }

    /** {@code number unit}, the unit null for a bare number. */
    static Measure measure(String number, String unit) {
        Measure m = F.createMeasure();
        m.setNegative(number.startsWith("-"));
        m.setNumber(number.startsWith("-") ? number.substring(1) : number);
        m.setUnit(unit);
        return m;
    }

    static Bracket bracket(Amount inside) {
        Bracket m = F.createBracket();
        m.setFormula(inside);
        return m;
    }

    static Binary binary(Amount left, Operator operator, Amount right) {
        Binary m = F.createBinary();
        m.setLeft(left);
        m.setOperator(operator);
        m.setRight(right);
        return m;
    }

    static Let let(Plug plug, String name, Amount value) {
        Let m = F.createLet();
        m.setName(name);
        m.setValue(value);
        plug.getLets().add(m);
        return m;
    }

    static LetReference reference(Let let) {
        LetReference m = F.createLetReference();
        m.setLet(let);
        return m;
    }

    static Range range(Amount likely) {
        Range m = F.createRange();
        m.setLikely(likely);
        return m;
    }

    static Range range(Amount likely, Amount low, Amount high) {
        Range m = range(likely);
        m.setLow(low);
        m.setHigh(high);
        return m;
    }

    static Point point(Amount y, Amount z, boolean knuckle) {
        Point m = F.createPoint();
        m.setY(y);
        m.setZ(z);
        m.setKnuckle(knuckle);
        return m;
    }

    static Point point(String y, String z, boolean knuckle) {
        return point(measure(y, null), measure(z, null), knuckle);
    }

    static Station station(Plug plug, String name, Amount at) {
        Station m = F.createStation();
        m.setName(name);
        m.setAt(at);
        plug.getStations().add(m);
        return m;
    }

    /** {@code plug Box { station A at 0 { 0 0 100 0 knuckle 100 50 knuckle 0 50 } station B at 400 like A }} */
    static Plug box() {
        Plug plug = F.createPlug();
        plug.setName("Box");
        Station a = station(plug, "A", measure("0", null));
        a.getPoints().add(point("0", "0", false));
        a.getPoints().add(point("100", "0", true));
        a.getPoints().add(point("100", "50", true));
        a.getPoints().add(point("0", "50", false));
        var like = F.createLike();
        like.setStation(a);
        station(plug, "B", measure("400", null)).setForm(like);
        return plug;
    }

    static Document library(String name) {
        Document document = F.createDocument();
        LibraryHeader header = F.createLibraryHeader();
        header.setName(name);
        header.setCurrency("EUR");
        document.getHeaders().add(header);
        return document;
    }

    static Foam foam(Document library) {
        Foam m = F.createFoam();
        m.setName("Pour36");
        m.setExpansion(range(measure("32", null), measure("28", null), measure("33", null)));
        m.setDensity(range(measure("36", "kg/m3")));
        library.getDeclarations().add(m);
        return m;
    }

    static Resin resin(Document library) {
        Resin m = F.createResin();
        m.setName("Laminating");
        library.getDeclarations().add(m);
        return m;
    }

    static Mat mat(Document library) {
        Mat m = F.createMat();
        m.setName("Csm450");
        m.setAreal(range(measure("450", "g/m2")));
        m.setGlass(range(measure("28.6", "%")));
        library.getDeclarations().add(m);
        return m;
    }
}
