package mouldwright.report;

import java.io.IOException;
import java.util.Locale;
import mouldwright.plan.OrderEntry;
import mouldwright.plan.TaskEntry;
import mouldwright.units.Dimension;

/** Tasks and orders as JSON. */
final class ProgrammeJson {

    private ProgrammeJson() { }

    static void task(JsonFile json, TaskEntry task) throws IOException {
        json.object(o -> {
            o.member("id", task.id()).member("stage", task.stage()).member("name", task.name()).member("labour", Published.minutes(task.labour()))
                    .member("persons", task.persons()).member("start", Published.minutes(task.start())).member("end", Published.minutes(task.end()))
                    .member("startDay", task.startDay()).member("endDay", task.endDay()).member("wait", Published.minutes(task.pause()))
                    .array("after", task.after(), JsonFile::text).member("critical", task.critical())
                    .array("hazards", task.hazards(), (h, hazard) -> h.text(hazard.name().toLowerCase(Locale.ROOT)));
            if (task.dates().isPresent()) {
                TaskEntry.Dates dates = task.dates().get();
                o.member("startDate", dates.start().toString()).member("endDate", dates.end().toString()).member("readyDate", dates.ready().toString());
            }
        });
    }

    static void order(JsonFile json, OrderEntry order) throws IOException {
        Dimension dimension = order.dimension();
        json.object(o -> {
            o.member("material", order.name());
            if (order.title().isPresent()) {
                o.member("title", order.title().get());
            }
            o.member("amount", Published.value(order.amount(), dimension)).member("low", Published.value(order.low(), dimension))
                    .member("high", Published.value(order.high(), dimension)).member("unit", Published.unit(dimension)).array("stages", order.stages(), JsonFile::text);
            if (order.packing().isPresent()) {
                packing(o, order.packing().get());
            }
        });
    }

    private static void packing(JsonFile o, OrderEntry.Packing packing) throws IOException {
        o.member("pack", packing.size()).member("packs", packing.packs()).member("packsLow", packing.low()).member("packsHigh", packing.high())
                .member("left", packing.left()).member("price", packing.price());
        if (packing.cost().isPresent()) {
            o.member("cost", packing.cost().getAsDouble());
        }
        if (!packing.currency().isEmpty()) {
            o.member("currency", packing.currency());
        }
    }
}
