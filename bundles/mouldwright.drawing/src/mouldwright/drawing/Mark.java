package mouldwright.drawing;

import java.util.List;
import java.util.Objects;

/** What is drawn. */
public sealed interface Mark {

    /** The least box round it. */
    Extent extent();

    /** A line, drawn with a pen. */
    record Line(Path path, Pen pen) implements Mark {
        @Override public Extent extent() {
            return path.extent();
        }
    }

    /** An area inside rings; where rings lie in one another, every second one is a hole.
     *  @param fill how it is filled */
    record Area(List<Path> rings, Fill fill) implements Mark {
        /** Takes a copy. */
        public Area {
            rings = List.copyOf(rings);
            if (rings.isEmpty())
                throw new IllegalArgumentException("an area without an edge");
        }

        @Override public Extent extent() {
            return rings.stream().map(Path::extent).reduce(Extent::with).orElseThrow();
        }
    }

    /** A whole circle, which machines bore rather than cut. */
    record Circle(Spot centre, double radius, Pen pen) implements Mark {
        @Override public Extent extent() {
            return new Extent(centre.x() - radius, centre.y() - radius, centre.x() + radius, centre.y() + radius);
        }
    }

    /** Words in one line.
     *  @param at     where they stand, on the foot of the letters
     *  @param height of a capital letter, mm
     *  @param anchor which part of them stands there
     *  @param angle  turned by, degrees counter-clockwise
     *  @param tone   colour */
    record Words(String text, Spot at, double height, Anchor anchor, double angle, Tone tone) implements Mark {
        /** Takes out what cannot be printed. */
        public Words {
            Objects.requireNonNull(at, "at");
            text = text.codePoints().filter(Words::printed).collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
            if (!(height > 0))
                throw new IllegalArgumentException("letters " + height + " mm high");
        }

        /** Besides what has no shape, signs that turn the direction of the words round are left out: they would make a name read as another. */
        private static boolean printed(int c) {
            boolean turns = c >= 0x202a && c <= 0x202e || c >= 0x2066 && c <= 0x2069 || c == 0x200e || c == 0x200f || c == 0x61c;
            return !Character.isISOControl(c) && Character.isValidCodePoint(c) && !(c >= 0xd800 && c <= 0xdfff) && !turns;
        }

        /** mm across. */
        public double width() {
            return Lettering.width(text, height);
        }

        @Override public Extent extent() {
            double width = width(), left = switch (anchor) {
                case START -> 0;
                case MIDDLE -> -width / 2;
                case END -> -width;
            };
            double c = Math.cos(Math.toRadians(angle)), s = Math.sin(Math.toRadians(angle));
            List<Spot> corners = new java.util.ArrayList<>();
            for (double x : new double[] {left, left + width})
                for (double y : new double[] {-0.3 * height, 1.1 * height})
                    corners.add(at.plus(x * c - y * s, x * s + y * c));
            return Extent.of(corners);
        }
    }

    /** Which part of some words stands at their place. */
    enum Anchor { /** Their beginning. */ START, /** Their middle. */ MIDDLE, /** Their end. */ END }

    /** How an area is filled. */
    sealed interface Fill {
        /** Evenly. @param strength from 0 for nothing to 1 for the full colour */
        record Even(Tone tone, double strength) implements Fill { }

        /** By a colour of its own, such as one of a ramp. @param colour red, green and blue by bytes */
        record Coloured(int colour) implements Fill { }

        /** By slanting lines. @param spacing mm @param angle degrees */
        record Hatch(Pen pen, double spacing, double angle) implements Fill { }
    }
}
