package mouldwright.workbench.views.paint;

import java.util.List;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.Extent;
import mouldwright.drawing.HatchLines;
import mouldwright.drawing.Layer;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Palette;
import mouldwright.drawing.Pen;
import mouldwright.drawing.Spot;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.LineAttributes;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.Transform;

/** Paints a drawing, the same that is written to files, on a screen or a printer. */
public final class DrawingPainter implements AutoCloseable {

    /** How far a bend may be off, pixels. */
    private static final double FLATNESS = 0.1;
    /** Letters lower than this are no longer told apart, pixels; a line stands for them. */
    private static final double UNREADABLE = 1.5;
    private static final double LIT = 3;

    private final GC gc;
    private final Glance glance;
    private final Palette palette;
    private final String lit;
    private final Letters letters;

    /**
     * @param glance  which part is painted where
     * @param lit     key of what stands out; empty for nothing
     */
    public DrawingPainter(GC gc, Glance glance, Palette palette, String lit) {
        this.gc = gc;
        this.glance = glance;
        this.palette = palette;
        this.lit = lit;
        this.letters = new Letters(gc);
        gc.setAntialias(SWT.ON);
        gc.setFillRule(SWT.FILL_EVEN_ODD);
    }

    /** Paints all of it. Marks outside the picture are left out. */
    public void paint(Drawing drawing) {
        Rectangle clip = gc.getClipping();
        Spot low = glance.spot(clip.x, clip.y + clip.height), high = glance.spot(clip.x + clip.width, clip.y);
        Extent seen = new Extent(low.x(), low.y(), high.x(), high.y());
        for (Layer layer : drawing.layers())
            for (Layer.Item item : layer.items())
                if (meets(item.mark().extent(), seen))
                    paint(item.mark(), !lit.isEmpty() && item.about().equals(lit), clip);
    }

    private static boolean meets(Extent one, Extent seen) {
        return one.left() <= seen.right() && one.right() >= seen.left() && one.bottom() <= seen.top() && one.top() >= seen.bottom();
    }

    private void paint(Mark mark, boolean standsOut, Rectangle clip) {
        switch (mark) {
            case Mark.Line line -> stroke(line.path(), line.pen(), standsOut);
            case Mark.Circle circle -> stroke(mouldwright.drawing.Path.circle(circle.centre(), circle.radius()), circle.pen(), standsOut);
            case Mark.Area area -> fill(area, clip);
            case Mark.Words words -> words(words);
        }
    }

    private void stroke(mouldwright.drawing.Path path, Pen pen, boolean standsOut) {
        double width = Math.max(1, pen.width() * glance.scale()) * (standsOut ? LIT : 1);
        float[] dash = new float[pen.dash().size()];
        for (int i = 0; i < dash.length; i++)
            dash[i] = (float) Math.max(1, pen.dash().get(i) * glance.scale());
        gc.setForeground(colour(palette.of(pen.tone())));
        gc.setLineAttributes(new LineAttributes((float) width, SWT.CAP_FLAT, SWT.JOIN_ROUND, dash.length == 0 ? SWT.LINE_SOLID : SWT.LINE_CUSTOM, dash.length == 0 ? null : dash, 0, 10));
        Path line = path(List.of(path));
        gc.drawPath(line);
        line.dispose();
    }

    private void fill(Mark.Area area, Rectangle clip) {
        Path rings = path(area.rings());
        switch (area.fill()) {
            case Mark.Fill.Even even -> {
                gc.setAlpha((int) Math.round(255 * even.strength()));
                gc.setBackground(colour(palette.of(even.tone())));
                gc.fillPath(rings);
                gc.setAlpha(255);
            }
            case Mark.Fill.Coloured coloured -> {
                gc.setBackground(colour(coloured.colour()));
                gc.fillPath(rings);
            }
            case Mark.Fill.Hatch hatch -> {
                gc.setClipping(rings);
                HatchLines.over(area.extent(), hatch.spacing(), hatch.angle()).forEach(line -> stroke(line, hatch.pen(), false));
                gc.setClipping(clip);
            }
        }
        rings.dispose();
    }

    private Path path(List<mouldwright.drawing.Path> parts) {
        Path path = new Path(gc.getDevice());
        for (mouldwright.drawing.Path part : parts) {
            List<Spot> spots = part.flattened(FLATNESS / glance.scale());
            path.moveTo(glance.across(spots.getFirst()), glance.down(spots.getFirst()));
            spots.subList(1, spots.size()).forEach(spot -> path.lineTo(glance.across(spot), glance.down(spot)));
            if (part.closed())
                path.close();
        }
        return path;
    }

    private void words(Mark.Words words) {
        double capital = words.height() * glance.scale();
        if (words.text().isBlank())
            return;
        double width = words.width(), start = switch (words.anchor()) {
            case START -> 0;
            case MIDDLE -> -width / 2;
            case END -> -width;
        };
        Transform before = new Transform(gc.getDevice()), turned = new Transform(gc.getDevice());
        gc.getTransform(before);
        gc.getTransform(turned);
        turned.translate(glance.across(words.at()), glance.down(words.at()));
        turned.rotate((float) -words.angle());
        turned.translate((float) (start * glance.scale()), 0);
        gc.setTransform(turned);
        gc.setBackground(colour(palette.of(words.tone())));
        if (capital < UNREADABLE) {
            gc.setAlpha(70);
            gc.fillRectangle(0, (int) -Math.ceil(capital), (int) Math.ceil(width * glance.scale()), Math.max(1, (int) Math.round(capital)));
            gc.setAlpha(255);
        } else {
            turned.scale(letters.scale(capital), letters.scale(capital));
            gc.setFillRule(SWT.FILL_WINDING);
            letters.fill(gc, turned, words.text());
            gc.setFillRule(SWT.FILL_EVEN_ODD);
        }
        gc.setTransform(before);
        before.dispose();
        turned.dispose();
    }

    private static Color colour(int rgb) {
        return new Color(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff);
    }

    @Override
    public void close() {
        letters.close();
    }
}
