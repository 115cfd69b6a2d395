package mouldwright.plan.read;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import mouldwright.exchange.drawing.DrawingResult;
import mouldwright.exchange.drawing.Drawings;
import mouldwright.exchange.drawing.DrawnSection;
import mouldwright.exchange.drawing.OutlineResult;
import mouldwright.exchange.table.TableResult;
import mouldwright.exchange.table.Tables;
import mouldwright.units.Unit;

/** Remembers what was read of tables and drawings by what stands in them, so that each is read once while a spec is typed. The least used of
 *  what it holds is forgotten first. For several threads at once. */
public final class SectionMemo {

    /** Drawings are the large ones; a spec names a few files and some dozens of layers. */
    private static final int MOST = 200;

    private final Map<List<Object>, Object> kept = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<List<Object>, Object> eldest) {
            return size() > MOST;
        }
    };

    TableResult table(String text, Unit otherwise) {
        return kept(List.of("table", text, otherwise), TableResult.class, () -> Tables.read(text, Optional.of(otherwise)));
    }

    DrawingResult drawing(String text) {
        return kept(List.of("drawing", text), DrawingResult.class, () -> Drawings.read(text));
    }

    OutlineResult outline(String text, String layer, Unit unit, boolean full) {
        return kept(List.of("outline", text, layer, unit, full), OutlineResult.class, () -> DrawnSection.of(layer,
                drawing(text).drawing().orElseThrow().layers().get(layer), unit, full, DrawnSection.TOLERANCE));
    }

    private synchronized <T> T kept(List<Object> key, Class<T> type, Supplier<T> made) {
        Object known = kept.get(key);
        if (known != null)
            return type.cast(known);
        T fresh = made.get();
        kept.put(key, fresh);
        return fresh;
    }
}
