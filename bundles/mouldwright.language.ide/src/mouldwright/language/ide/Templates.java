package mouldwright.language.ide;

import static java.util.Map.entry;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import mouldwright.model.PlugPackage.Literals;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.scoping.IScopeProvider;

/** Whole blocks to begin with. A gap that wants a name of a library begins with one that is known at the place. */
final class Templates {

    private static final Map<String, String> ALL = Map.ofEntries(
            entry("Plug plug", """
                    plug ${1:Name} "${2:What it is}" {
                        units mm
                        half sections
                        shop 20 degC
                        station ${3:Fore} at 0 superellipse ${4:300} by ${5:400} above 20
                        station ${6:Aft} at ${7:600} like ${3:Fore}
                        $0
                    }"""),
            entry("Station station", """
                    station ${1:S1} at ${2:0} {
                        0 ${3:0}
                        ${4:200} ${5:150}
                        0 ${6:300}
                    }"""),
            entry("StationRow stations", "stations ${1:R1} to ${2:R3} from ${3:300} every ${4:200} lofted"),
            entry("Plug frame", """
                    frame {
                        sheet ${1:<sheet>} measured ${2:11.7}
                        edges ${3:square}
                        rim ${4:60}
                        $0
                    }"""),
            entry("Plug fill", """
                    fill ${1:<foam>} shell ${2:90} {
                        overfill ${3:15}
                        $0
                    }"""),
            entry("Plug carve", """
                    carve {
                        board ${1:1200}
                        crown ${2:1.5} at most
                        filler ${3:<filler>}
                    }"""),
            entry("Plug skin", """
                    skin ${1:<schedule>} {
                        lap ${2:50}
                        gel for ${3:25 min}
                        on foam ${4:350 g/m2}
                    }"""),
            entry("Plug finish", """
                    finish {
                        ${1:3} coats ${2:<coating>}
                        sand ${3:80 120 180 240 320 400 600 800 1000}
                    }"""),
            entry("Plug mould", """
                    mould ${1:<schedule>} {
                        draft ${2:2 deg} at least
                        flange ${3:75}
                        one piece pull ${4:up}
                        release {
                            ${5:5} coats ${6:<coating>}
                        }
                        hold ${7:14 d}
                    }"""),
            entry("Plug air", """
                    air {
                        limit ${1:20 ppm}
                        mixing ${2:3}
                    }"""),
            entry("Survey survey", """
                    survey ${1:<plug>} on ${2:2027-03-09} {
                        temperature ${3:19 degC}
                        $0
                    }"""),
            entry("Hardener hardener", """
                    hardener ${1:Mekp} {
                        density ${2:1.16 kg/l}
                    }"""),
            entry("Resin resin", """
                    resin ${1:Laminating} "${2:What it is}" {
                        density ${3:1.13 kg/l}
                        styrene ${4:35 %}
                        unwaxed
                        catalyst ${5:<hardener>} ${6:1 %} to ${7:2.5 %}
                        gel {
                            ${8:20 degC} ${9:1 %} ${10:35 min}
                            ${11:20 degC} ${12:2 %} ${13:18 min}
                        }
                        pot ${14:2 kg} at most
                        source "${15:supplier's data sheet}"
                    }"""),
            entry("Mat mat", """
                    mat ${1:Csm300} {
                        areal ${2:300 g/m2}
                        glass ${3:30 %}
                        roll ${4:1.25 m} by ${5:50 m}
                    }"""),
            entry("Foam foam", """
                    foam ${1:Pour36} {
                        expansion ${2:32}
                        density ${3:36 kg/m3}
                        ratio ${4:100} to ${5:100} by volume
                        parts ${6:1.12 kg/l} and ${7:1.22 kg/l}
                        cream ${8:36 s}
                        firm ${9:30 min}
                        lift ${10:200 mm} at most
                        pot ${11:1 kg} at most
                        temperature ${12:18 degC} to ${13:27 degC}
                        source "${14:supplier's data sheet}"
                    }"""),
            entry("Filler filler", """
                    filler ${1:BodyFiller} {
                        density ${2:1.8 kg/l}
                        layer ${3:6 mm} at most
                        total ${4:12 mm} at most
                        hard after ${5:20 min}
                    }"""),
            entry("Coating coating", """
                    coating ${1:Surfacer} {
                        density ${2:1.3 kg/l}
                        wet ${3:200 um}
                        dry ${4:150 um}
                        transfer ${5:70 %}
                        recoat after ${6:30 min}
                    }"""),
            entry("Sheet sheet", """
                    sheet ${1:BirchPly12} {
                        size ${2:1220 mm} by ${3:2440 mm}
                        thickness ${4:12 mm}
                        density ${5:695 kg/m3}
                        kerf ${6:6 mm}
                    }"""),
            entry("Rates rates", """
                    rates ${1:Shop} {
                        carve ${2:1.5 m2/h}
                        fair ${3:1 m2/h}
                        sand grit ${4:80} ${5:2 m2/h}
                    }"""),
            entry("Schedule schedule", """
                    schedule ${1:Shell} using ${2:<resin>} {
                        ply ${3:<mat>}
                        2 of ply ${4:<mat>}
                    }"""),
            entry("Consumable consumable", """
                    consumable ${1:Gloves} {
                        per pot ${2:1}
                        pack ${3:100} at ${4:9.00}
                    }"""));

    private static final Map<String, EReference> REFERENCES = Map.of("<sheet>", Literals.FRAME__SHEET, "<foam>", Literals.FILL__FOAM, "<filler>", Literals.CARVE__FILLER,
            "<schedule>", Literals.SKIN__SCHEDULE, "<coating>", Literals.COATS__COATING, "<plug>", Literals.SURVEY__PLUG, "<hardener>", Literals.RESIN__HARDENER,
            "<resin>", Literals.SCHEDULE__RESIN, "<mat>", Literals.PLY__MAT);

    private static final Pattern NAME = Pattern.compile("<(\\w+)>");

    /** The block a keyword begins; empty if it begins none. */
    Optional<Proposal> of(Expectation keyword, Cursor.At at, IScopeProvider scopes) {
        return Optional.ofNullable(ALL.get(keyword.rule() + " " + keyword.word()))
                .map(text -> new Proposal(Proposal.Kind.TEMPLATE, keyword.word() + " ...", filled(text, at, scopes), "whole block", ""));
    }

    private static String filled(String text, Cursor.At at, IScopeProvider scopes) {
        return NAME.matcher(text).replaceAll(match -> Matcher.quoteReplacement(name(match.group(), at, scopes)));
    }

    /** The first name known at the place, or a word of the trade to be replaced. */
    private static String name(String wanted, Cursor.At at, IScopeProvider scopes) {
        return at.context().flatMap(part -> {
            var known = scopes.getScope(part, REFERENCES.get(wanted)).getAllElements().iterator();
            return known.hasNext() ? Optional.of(known.next().getName().toString()) : Optional.<String>empty();
        }).orElseGet(() -> Character.toUpperCase(wanted.charAt(1)) + wanted.substring(2, wanted.length() - 1));
    }
}
