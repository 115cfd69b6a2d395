package mouldwright.workbench.views.paint;

import java.util.Optional;
import java.util.function.Consumer;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.Palette;
import mouldwright.drawing.Pick;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

/**
 * Shows a drawing. The wheel, or plus and minus, brings it nearer; a drag, or the arrow keys, moves it; Home, or a double click, shows all of it.
 * A click picks.
 */
public final class DrawingCanvas extends Canvas {

    private static final double NEARER = 1.2;
    private static final int STEP = 40;
    /** How far the pointer may be off what it picks, and how far it may slip in a click, pixels. */
    private static final int REACH = 4;

    private final Consumer<String> picked;
    private Optional<Drawing> drawing = Optional.empty();
    private Optional<Glance> glance = Optional.empty();
    private String lit = "";
    private String notice = "";
    private boolean veiled;
    private boolean whole = true;
    private Optional<Point> from = Optional.empty();
    private boolean dragged;

    /** @param picked told the key of what was clicked */
    public DrawingCanvas(Composite parent, Consumer<String> picked) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
        this.picked = picked;
        addPaintListener(event -> paint(event.gc));
        addListener(SWT.Resize, event -> resized());
        addListener(SWT.MouseDown, this::down);
        addListener(SWT.MouseMove, this::move);
        addListener(SWT.MouseUp, this::up);
        addListener(SWT.MouseDoubleClick, event -> fit());
        addListener(SWT.MouseVerticalWheel, event -> near(event.count > 0 ? NEARER : 1 / NEARER, event.x, event.y));
        addListener(SWT.KeyDown, event -> key(event.keyCode, event.character));
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        addListener(SWT.Traverse, new TabLeaves());
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = drawing.map(Drawing::title).orElse(notice);
            }

            @Override
            public void getDescription(AccessibleEvent event) {
                event.result = drawing.map(Drawing::words).orElse("");
            }
        });
    }

    /**
     * Shows a drawing, or why there is none. What is looked at stays where it is while one version of a drawing follows another.
     *
     * @param shown  the drawing; empty for none
     * @param key    of what stands out; empty for nothing
     * @param words  said instead of a drawing, or at the foot of one that is paled
     * @param paled  whether it is of an older text
     */
    public void show(Optional<Drawing> shown, String key, String words, boolean paled) {
        boolean other = !shown.map(Drawing::extent).equals(drawing.map(Drawing::extent));
        drawing = shown;
        lit = key;
        notice = words;
        veiled = paled;
        if (other && whole)
            fit();
        redraw();
    }

    /** What is shown. */
    public Optional<Drawing> drawing() {
        return drawing;
    }

    /** Where it is shown; empty for nothing. */
    public Optional<Glance> glance() {
        return glance;
    }

    /** Whether it is paled, since it is of an older text. */
    public boolean isVeiled() {
        return veiled;
    }

    private void resized() {
        if (whole)
            fit();
        redraw();
    }

    private void fit() {
        Point size = getSize();
        whole = true;
        glance = size.x < 1 || size.y < 1 ? Optional.empty() : drawing.map(one -> Glance.fitting(one.extent(), size.x, size.y));
        redraw();
    }

    private void look(Glance other) {
        whole = false;
        glance = Optional.of(other);
        redraw();
    }

    private void near(double factor, double x, double y) {
        glance.ifPresent(one -> look(one.nearer(factor, x, y)));
    }

    private void pan(double dx, double dy) {
        glance.ifPresent(one -> look(one.moved(dx, dy)));
    }

    private void down(Event event) {
        forceFocus();
        from = Optional.of(new Point(event.x, event.y));
        dragged = false;
    }

    private void move(Event event) {
        from.ifPresent(start -> {
            if (!dragged && Math.abs(event.x - start.x) <= REACH && Math.abs(event.y - start.y) <= REACH)
                return;
            dragged = true;
            pan(event.x - start.x, event.y - start.y);
            from = Optional.of(new Point(event.x, event.y));
        });
    }

    private void up(Event event) {
        boolean click = from.isPresent() && !dragged && event.button == 1;
        from = Optional.empty();
        if (click && drawing.isPresent() && glance.isPresent())
            Pick.at(drawing.get(), glance.get().spot(event.x, event.y), REACH / glance.get().scale()).ifPresent(picked);
    }

    private void key(int code, char letter) {
        Point size = getSize();
        switch (code) {
            case SWT.ARROW_LEFT -> pan(STEP, 0);
            case SWT.ARROW_RIGHT -> pan(-STEP, 0);
            case SWT.ARROW_UP -> pan(0, STEP);
            case SWT.ARROW_DOWN -> pan(0, -STEP);
            case SWT.HOME -> fit();
            case SWT.KEYPAD_ADD -> near(NEARER, size.x / 2.0, size.y / 2.0);
            case SWT.KEYPAD_SUBTRACT -> near(1 / NEARER, size.x / 2.0, size.y / 2.0);
            default -> {
                if (letter == '+' || letter == '=')
                    near(NEARER, size.x / 2.0, size.y / 2.0);
                else if (letter == '-')
                    near(1 / NEARER, size.x / 2.0, size.y / 2.0);
            }
        }
    }

    /** Light on a dark screen, dark on a pale one. */
    private Palette palette() {
        Color ground = getBackground();
        return ground.getRed() * 299 + ground.getGreen() * 587 + ground.getBlue() * 114 < 128_000 ? Palette.DARK : Palette.PAPER;
    }

    private void paint(GC gc) {
        Point size = getSize();
        Palette palette = palette();
        Color ground = new Color(palette.ground() >> 16 & 0xff, palette.ground() >> 8 & 0xff, palette.ground() & 0xff);
        gc.setBackground(ground);
        gc.fillRectangle(0, 0, size.x, size.y);
        if (drawing.isPresent() && glance.isPresent())
            try (DrawingPainter painter = new DrawingPainter(gc, glance.get(), palette, lit)) {
                painter.paint(drawing.get());
            }
        gc.setForeground(getForeground());
        if (drawing.isEmpty())
            new Notice(gc, size).say(notice);
        else if (veiled)
            new Notice(gc, size).veil(ground, notice);
        if (isFocusControl())
            gc.drawFocus(0, 0, size.x, size.y);
    }
}
