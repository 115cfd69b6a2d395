package mouldwright.check;

import com.google.inject.Injector;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import mouldwright.language.PlugStandaloneSetup;
import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.CheckMode;
import org.eclipse.xtext.validation.Issue;

/** A plain body to try a check on, and what is found in it. */
final class Tried {

    private static final Injector INJECTOR = setUp();

    /** What the bodies are made of. */
    static final String STOCK = """
            foam Pour36 {
                expansion 32
                density 36 kg/m3
                ratio 100 to 100 by volume
                parts 1.12 kg/l and 1.22 kg/l
                cream 36 s
                firm 30 min
                lift 200 mm at most
                pot 1 kg at most
                temperature 18 degC to 27 degC
            }
            hardener Mekp { density 1.16 kg/l }
            resin Ortho {
                density 1.13 kg/l
                catalyst Mekp 1 % to 2.5 %
                gel {
                    15 degC 1 % 55 min
                    15 degC 2 % 30 min
                    25 degC 1 % 24 min
                    25 degC 2 % 12 min
                }
            }
            mat Csm450 { areal 450 g/m2 glass 28.6 % roll 1.25 m by 50 m }
            sheet Ply12 { size 1220 mm by 2440 mm thickness 12 mm density 695 kg/m3 }
            schedule OnePly using Ortho { ply Csm450 }
            schedule NoPly using Ortho { }
            mat Csm600 { areal 600 g/m2 glass 28.6 % }
            mat Csm150 { areal 150 g/m2 glass 28.6 % }
            coating Gel { density 1.2 kg/l wet 400 um dry 340 um }
            """;

    private Tried() { }

    private static Injector setUp() {
        org.apache.log4j.Logger.getRootLogger().setLevel(org.apache.log4j.Level.OFF);
        return new PlugStandaloneSetup().createInjectorAndDoEMFRegistration();
    }

    /** A plain cylinder of radius 200 mm and 600 mm length on three plates, with what a test adds. */
    static String cylinder(String more) {
        return STOCK + """
                plug P {
                    half sections
                    station A at 0 superellipse 200 by 400 exponent 2
                    station B at 300 like A
                    station C at 600 like A
                    %s
                }
                """.formatted(more);
    }

    /** Three sections round the x axis whose radii are given, on a pitch of 300 mm. */
    static String round(int first, int middle, int last, String more) {
        return STOCK + """
                plug P {
                    half sections
                    station A at 0 superellipse %1$d by %2$d exponent 2 above -%1$d
                    station B at 300 superellipse %3$d by %4$d exponent 2 above -%3$d
                    station C at 600 superellipse %5$d by %6$d exponent 2 above -%5$d
                    %7$s
                }
                """.formatted(first, 2 * first, middle, 2 * middle, last, 2 * last, more);
    }

    /** Sources of the stock are not what these tests are about. */
    private static final String SOURCE = "MW939";

    /** Code, message and remedy of each finding of a text, in its order. */
    static List<String> found(String text) {
        XtextResource resource = (XtextResource) INJECTOR.getInstance(XtextResourceSet.class).createResource(URI.createFileURI("/nowhere/tried.plug"));
        try {
            resource.load(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), Map.of());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return resource.getResourceServiceProvider().getResourceValidator().validate(resource, CheckMode.ALL, CancelIndicator.NullImpl).stream()
                .filter(issue -> !SOURCE.equals(issue.getCode())).map(Tried::words).toList();
    }

    private static String words(Issue issue) {
        String fix = issue.getData() == null || issue.getData().length == 0 ? "" : " -> " + issue.getData()[0];
        return issue.getCode() + " " + issue.getMessage() + fix;
    }

    /** A cylinder that is carved, with a survey of it; the filler takes 6 mm a layer. */
    static String surveyed(String readings) {
        return STOCK + """
                filler Stopper { layer 6 mm at most total 12 mm at most }
                plug P {
                    half sections
                    station A at 0 superellipse 200 by 400 exponent 2
                    station B at 300 like A
                    station C at 600 like A
                    frame { sheet Ply12 measured 12 tolerance 1.5 }
                    fill Pour36 solid { }
                    carve { filler Stopper }
                }
                survey P on 2027-03-09 { %s }
                """.formatted(readings);
    }

    /** A {@link #cylinder} whose foam has a price. */
    static String priced(String more) {
        return cylinder(more).replace("pot 1 kg at most", "pot 1 kg at most pack 40 kg at 310.00");
    }
}
