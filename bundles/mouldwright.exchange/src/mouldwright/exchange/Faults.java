package mouldwright.exchange;

import java.util.ArrayList;
import java.util.List;

/** Collects faults while a file is read. Of a file that is wrong all through the first are enough, and how many more there are. */
public final class Faults {

    private static final int MOST = 10;

    private final List<Fault> first = new ArrayList<>();
    private int count;

    /** Notes a fault. */
    public void add(Fault fault) {
        count++;
        if (first.size() < MOST)
            first.add(fault);
    }

    /** Notes a fault. */
    public void add(int line, String where, String message, String remedy) {
        add(new Fault(line, where, message, remedy));
    }

    /** Whether there is none. */
    public boolean none() {
        return count == 0;
    }

    /** The first of them in the order they were met, and how many more there are. */
    public List<Fault> all() {
        List<Fault> all = new ArrayList<>(first);
        if (count > MOST)
            all.add(new Fault(first.getLast().line(), "further on", (count - MOST) + " more like these", "mend the first ones and look again"));
        return List.copyOf(all);
    }
}
