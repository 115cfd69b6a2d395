package mouldwright.services;

import com.google.inject.Injector;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import mouldwright.check.Severity;
import mouldwright.exchange.Fault;
import mouldwright.exchange.StationOffsets;
import mouldwright.plan.read.ReadProblem;
import mouldwright.report.TextFinding;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.IGrammarAccess;

/** Makes a spec of the offsets in a table or a drawing. */
final class OffsetsImport {

    private final Injector injector;

    OffsetsImport(Injector injector) {
        this.injector = injector;
    }

    /** A spec in the one layout, not yet checked; or what is wrong with the file. */
    Imported of(Path file, String text, ImportOrder order) {
        String name = file.getFileName().toString();
        OffsetsReader reader = new OffsetsReader(order);
        List<StationOffsets> stations = reader.stations(name, text);
        boolean drawn = name.toLowerCase(Locale.ROOT).endsWith(".dxf");
        if (stations.isEmpty())
            return new Imported.Refused(reader.faults().stream().map(fault -> finding(file, drawn, fault)).toList(), Map.of(file, text));
        boolean full = drawn ? order.full() : stations.stream().flatMap(station -> station.points().stream()).anyMatch(point -> point.y() < 0);
        Set<String> words = new HashSet<>(GrammarUtil.getAllKeywords(injector.getInstance(IGrammarAccess.class).getGrammar()));
        String draft = new SpecDraft(words, reader.unit()).text(order.name(), name, full, stations);
        return switch (new LayoutWriter(injector).layOut(file.resolveSibling("import.plug"), draft)) {
            case Layout.Laid(String laid, boolean changed) -> new Imported.Spec(laid, List.of());
            case Layout.Refused refused -> throw new IllegalStateException("what was read of " + name + " makes no spec: " + refused.findings());
            case Layout.Unread unread -> throw new IllegalStateException("a text in memory cannot be unread");
            case Layout.MeaningLost(String word) -> throw new IllegalStateException("laying out what was read of " + name + " would change it at `" + word + "`");
        };
    }

    private static TextFinding finding(Path file, boolean drawn, Fault fault) {
        ReadProblem.Kind kind = drawn ? ReadProblem.Kind.DRAWING : ReadProblem.Kind.TABLE;
        return new TextFinding(kind.code(), Severity.ERROR, fault.words(), file, Math.max(1, fault.line()), 1, 0, Optional.of(fault.remedy()));
    }
}
