package mouldwright.workbench.views;

import java.util.Optional;
import mouldwright.plan.BuildPlan;
import mouldwright.workbench.editor.Shown;
import mouldwright.workbench.views.paint.Notice;
import mouldwright.workbench.views.paint.TabLeaves;
import mouldwright.workbench.views.surface.Camera;
import mouldwright.workbench.views.surface.Painting;
import mouldwright.workbench.views.surface.Solid;
import mouldwright.workbench.views.surface.SurfaceColouring;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.MouseEvent;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

/** The plug as a solid that turns under the pointer, coloured by what is asked for. */
public final class SurfaceView extends PlanView {

    private static final PaletteData DIRECT = new PaletteData(0xff0000, 0xff00, 0xff);
    private static final double STEP = 12;
    private static final double NEARER = 1.15;

    private Canvas canvas;
    private SurfaceColouring colouring = SurfaceColouring.ALL.getFirst();
    private Shown now = Shown.NOTHING;
    private Optional<Solid> solid = Optional.empty();
    private Camera camera;
    private Painting painting = new Painting(1, 1);
    private Point from;
    private int button;

    @Override
    protected void create(Composite parent) {
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
        canvas.addPaintListener(event -> paint(event.gc));
        canvas.addListener(SWT.Resize, event -> fit());
        canvas.addListener(SWT.MouseDown, event -> {
            from = new Point(event.x, event.y);
            button = event.button;
            canvas.setFocus();
        });
        canvas.addListener(SWT.MouseUp, event -> from = null);
        canvas.addMouseMoveListener(this::drag);
        canvas.addMouseWheelListener(event -> near(event.count > 0 ? NEARER : 1 / NEARER, event.x, event.y));
        canvas.addListener(SWT.Traverse, new TabLeaves());
        canvas.addListener(SWT.KeyDown, event -> key(event.keyCode));
        for (SurfaceColouring one : SurfaceColouring.ALL)
            getViewSite().getActionBars().getMenuManager().add(choice(one));
    }

    private IAction choice(SurfaceColouring one) {
        Action action = new Action("Colour by " + one.title().toLowerCase(java.util.Locale.ROOT), IAction.AS_RADIO_BUTTON) {
            @Override
            public void run() {
                if (isChecked()) {
                    colouring = one;
                    make();
                }
            }
        };
        action.setChecked(one == colouring);
        return action;
    }

    @Override
    protected void show(Shown shown) {
        boolean other = !shown.hasPlanOf(now);
        now = shown;
        if (other)
            make();
        else
            canvas.redraw();
    }

    private void make() {
        if (now.plan().isEmpty()) {
            solid = Optional.empty();
            canvas.redraw();
            return;
        }
        BuildPlan of = now.plan().get();
        SurfaceColouring by = colouring;
        background().run("Surface", () -> by.solid(of), made -> {
            boolean first = solid.isEmpty();
            solid = made;
            if (first)
                fit();
            canvas.redraw();
        });
    }

    /** The surface that is shown; empty for none. */
    public Optional<Solid> solid() {
        return solid;
    }

    private void fit() {
        Point size = canvas.getSize();
        if (size.x < 1 || size.y < 1)
            return;
        solid.ifPresent(one -> camera = Camera.fitting(one, size.x, size.y));
        canvas.redraw();
    }

    private void look(Camera other) {
        if (camera != null) {
            camera = other;
            canvas.redraw();
        }
    }

    private void near(double factor, double x, double y) {
        if (camera != null)
            look(camera.nearer(factor, x, y));
    }

    private void drag(MouseEvent event) {
        if (from == null || camera == null)
            return;
        double dx = event.x - from.x, dy = event.y - from.y;
        from = new Point(event.x, event.y);
        look(button == 1 && (event.stateMask & SWT.SHIFT) == 0 ? camera.turned(dx, dy) : camera.moved(dx, dy));
    }

    private void key(int code) {
        if (camera == null)
            return;
        Point size = canvas.getSize();
        switch (code) {
            case SWT.ARROW_LEFT -> look(camera.turned(-STEP, 0));
            case SWT.ARROW_RIGHT -> look(camera.turned(STEP, 0));
            case SWT.ARROW_UP -> look(camera.turned(0, -STEP));
            case SWT.ARROW_DOWN -> look(camera.turned(0, STEP));
            case '+', '=', SWT.KEYPAD_ADD -> near(NEARER, size.x / 2.0, size.y / 2.0);
            case '-', SWT.KEYPAD_SUBTRACT -> near(1 / NEARER, size.x / 2.0, size.y / 2.0);
            case SWT.HOME -> fit();
            default -> { }
        }
    }

    private void paint(GC gc) {
        Point size = canvas.getSize();
        Color ground = canvas.getBackground(), ink = canvas.getForeground();
        gc.setForeground(ink);
        if (solid.isEmpty() || camera == null) {
            gc.setBackground(ground);
            gc.fillRectangle(0, 0, size.x, size.y);
            new Notice(gc, size).say(notice(now));
            return;
        }
        if (painting.width() != size.x || painting.height() != size.y)
            painting = new Painting(size.x, size.y);
        painting.fill(solid.get(), camera, colouring.ramp(solid.get()), number(ground), number(ink));
        ImageData data = new ImageData(size.x, size.y, 32, DIRECT, size.x * 4, bytes(painting.pixels()));
        Image image = new Image(gc.getDevice(), data);
        gc.drawImage(image, 0, 0);
        image.dispose();
        new Legend(gc, size).draw(colouring, solid.get());
        if (now.state() == Shown.State.BROKEN)
            new Notice(gc, size).veil(ground, notice(now));
    }

    private static int number(Color colour) {
        return colour.getRed() << 16 | colour.getGreen() << 8 | colour.getBlue();
    }

    private static byte[] bytes(int[] pixels) {
        byte[] bytes = new byte[pixels.length * 4];
        for (int i = 0; i < pixels.length; i++) {
            bytes[4 * i + 1] = (byte) (pixels[i] >> 16);
            bytes[4 * i + 2] = (byte) (pixels[i] >> 8);
            bytes[4 * i + 3] = (byte) pixels[i];
        }
        return bytes;
    }

    @Override
    public void setFocus() {
        canvas.setFocus();
    }
}
