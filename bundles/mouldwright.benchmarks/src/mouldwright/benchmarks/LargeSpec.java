package mouldwright.benchmarks;

import java.util.Locale;

/** Writes a large spec: a faired hull-like body with a plate at every station and every section typed in as points, as a drawing
 *  office hands it over. It asks for all stages. */
public final class LargeSpec {
    /** Stations of the large spec that is measured. */
    public static final int STATIONS = 200;
    /** Points of each of its half sections. */
    public static final int POINTS = 60;

    /** Between stations, mm. */
    private static final double SPACING = 60;
    private static final double EXPONENT = 2.4;

    private LargeSpec() { }

    /** The text of a spec without local plies.
     *  @param stations two or more
     *  @param points   of each half section, three or more */
    public static String text(int stations, int points) {
        return text(stations, points, 0);
    }

    /** The text of a spec.
     *  @param stations two or more
     *  @param points   of each half section, three or more
     *  @param plies    local ones, over stretches that overlap and end in different lines */
    public static String text(int stations, int points, int plies) {
        StringBuilder text = new StringBuilder();
        for (String library : new String[] { "polyester", "foam", "sheet", "finish", "rates", "schedules" })
            text.append("use stock.").append(library).append(" version \"1.0\"\n");
        text.append("""

                plug Large "A long fairing" {
                    units mm
                    currency EUR
                    half sections
                    shop 20 degC from 18 degC to 22 degC
                    crew 4 at 28.00 per h
                    rates Shop
                    part PartShell
                    allow 0.3 % shrink
                    bare 0 % to 12 %
                    end forward bare
                    end aft moulded
                """);
        for (int i = 0; i < stations; i++)
            station(text, i, (double) i / (stations - 1), points);
        text.append("""
                    frame {
                        sheet BirchPly12 measured 11.7 from 11.6 to 11.9 clearance 0.2
                        edges square
                        rim 60
                        backbone 60 by 90 above 200
                    }
                    fill Pour36 shell 90 {
                        overfill 15
                    }
                    carve {
                        board 1200
                        crown 1 at most
                    }
                    skin ProtectiveSkin {
                        lap 50
                        gel for 25 min
                        on foam 350 g/m2 from 200 g/m2 to 500 g/m2
                """);
        for (int i = 0; i < plies; i++)
            ply(text, i, stations);
        return text.append("""
                    }
                    finish {
                        3 coats Surfacer
                        sand 80 120 180 240 320 400 600 800 1000
                    }
                }
                """).toString();
    }

    /** Over a fifth of the body and a fifth of its girth, each a step on from the last. */
    private static void ply(StringBuilder text, int number, int stations) {
        int length = Math.max(1, stations / 5), from = 1 + number * 3 % Math.max(1, stations - length);
        double low = 15 + number * 7.3 % 60;
        text.append(String.format(Locale.ROOT, "        bay S%d to S%d girth %.1f %% to %.1f %% add ply Csm225\n", from, from + length, low, low + 20));
    }

    /** A superellipse that swells and tapers along the body, from bottom centre up. @param share of the body's length */
    private static void station(StringBuilder text, int number, double share, int points) {
        double swelling = 0.65 + 0.35 * Math.sin(Math.PI * (0.2 + 0.7 * share));
        double halfBreadth = 520 * swelling, height = 600 * swelling, above = 20;
        text.append(String.format(Locale.ROOT, "    station S%d at %.0f {\n", number + 1, number * SPACING));
        for (int k = 0; k < points; k++) {
            double angle = Math.PI * k / (points - 1) - Math.PI / 2;
            double y = k == 0 || k == points - 1 ? 0 : halfBreadth * Math.pow(Math.cos(angle), 2 / EXPONENT);
            double z = above + height / 2 * (1 + Math.signum(angle) * Math.pow(Math.abs(Math.sin(angle)), 2 / EXPONENT));
            text.append(String.format(Locale.ROOT, "        %.2f %.2f\n", y, z));
        }
        text.append("    }\n");
    }

    /** Prints the large spec. @param arguments stations and points, if others than 200 and 60 */
    public static void main(String[] arguments) {
        int stations = arguments.length > 0 ? Integer.parseInt(arguments[0]) : STATIONS;
        int points = arguments.length > 1 ? Integer.parseInt(arguments[1]) : POINTS;
        System.out.print(text(stations, points));
    }
}
