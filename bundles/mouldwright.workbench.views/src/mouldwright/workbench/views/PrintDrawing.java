package mouldwright.workbench.views;

import java.util.Optional;
import java.util.function.Supplier;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.Extent;
import mouldwright.drawing.Palette;
import mouldwright.workbench.views.paint.DrawingPainter;
import mouldwright.workbench.views.paint.Glance;
import org.eclipse.jface.action.Action;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.printing.PrintDialog;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Shell;

/** Prints what a view shows on one page: true to size where it fits, else smaller, and then it says so. */
final class PrintDrawing extends Action {

    private static final double MM_AN_INCH = 25.4;

    private final Shell shell;
    private final Supplier<Optional<DrawingView.Named>> shown;

    PrintDrawing(Shell shell, Supplier<Optional<DrawingView.Named>> shown) {
        super("Print\u2026");
        this.shell = shell;
        this.shown = shown;
    }

    @Override
    public void run() {
        shown.get().ifPresent(named -> {
            PrintDialog dialog = new PrintDialog(shell, SWT.NONE);
            PrinterData wide = new PrinterData();
            wide.orientation = named.drawing().extent().width() > named.drawing().extent().height() ? PrinterData.LANDSCAPE : PrinterData.PORTRAIT;
            dialog.setPrinterData(wide);
            PrinterData chosen = dialog.open();
            if (chosen != null)
                print(named.drawing(), chosen);
        });
    }

    private static void print(Drawing drawing, PrinterData chosen) {
        Printer printer = new Printer(chosen);
        try {
            if (printer.startJob("Mouldwright " + drawing.title()) && printer.startPage()) {
                GC gc = new GC(printer);
                page(gc, drawing, printer.getClientArea(), printer.getDPI().x / MM_AN_INCH);
                gc.dispose();
                printer.endPage();
                printer.endJob();
            }
        } finally {
            printer.dispose();
        }
    }

    /** @param dots a millimetre of paper */
    private static void page(GC gc, Drawing drawing, Rectangle area, double dots) {
        Extent box = drawing.extent();
        Glance fitting = Glance.fitting(box, area.width, area.height);
        Glance used = fitting.scale() >= dots ? new Glance(dots, -dots * box.left(), dots * box.top()) : fitting;
        try (DrawingPainter painter = new DrawingPainter(gc, used, Palette.PAPER, "")) {
            painter.paint(drawing);
        }
        if (used.scale() < dots)
            gc.drawText("Printed at " + Math.round(100 * used.scale() / dots) + " % to fit the paper: do not measure on it. Write a PDF to print true to size.", 0, 0, SWT.DRAW_TRANSPARENT);
    }
}
