package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where stages write what is to be done, in the order of the build. */
public final class TaskBook {

    /** A task and the stage it belongs to. */
    public record Entry(String stage, Task task) { }

    private final List<Entry> entries = new ArrayList<>();
    private String stage = "";

    /** What is written from here on belongs to a stage. */
    public void turnTo(String name) {
        stage = name;
    }

    /** Writes a task.
     *  @return its id, for others to wait on
     *  @throws IllegalArgumentException if the id is taken */
    public String add(Task task) {
        if (entries.stream().anyMatch(entry -> entry.task().id().equals(task.id())))
            throw new IllegalArgumentException("an id of its own, please: " + task.id());
        entries.add(new Entry(stage, task));
        return task.id();
    }

    /** Writes a task that follows the one this stage wrote last; the stage's first follows the stages before. */
    public String addNext(Task task) {
        return add(last().map(task::after).orElse(task));
    }

    /** @return id of the task this stage wrote last */
    public Optional<String> last() {
        return entries.isEmpty() || !entries.getLast().stage().equals(stage) ? Optional.empty()
                : Optional.of(entries.getLast().task().id());
    }

    /** @return all tasks */
    public List<Entry> entries() {
        return List.copyOf(entries);
    }
}
