package mouldwright.geometry.nest;

import java.util.SplittableRandom;

/** Small changes of a plan: two parts change places, a part is laid earlier or later, or places are judged another way. */
final class Change {
    private static final int KINDS = 8;

    private final SplittableRandom random;

    /** @param seed of the search @param number of the change: each draws from numbers of its own, whatever was drawn before */
    Change(long seed, long number) {
        this.random = new SplittableRandom(seed * 1_000_003L + number);
    }

    Layout.Plan of(Layout.Plan plan, int strength) {
        int[] sequence = plan.sequence().clone();
        SheetFilling.Favour favour = plan.favour();
        for (int k = 0; k < strength; k++) {
            int from = random.nextInt(sequence.length), to = random.nextInt(sequence.length);
            switch (random.nextInt(KINDS)) {
                case 0 -> favour = SheetFilling.Favour.values()[random.nextInt(SheetFilling.Favour.values().length)];
                case 1, 2, 3 -> {
                    int held = sequence[from];
                    sequence[from] = sequence[to];
                    sequence[to] = held;
                }
                default -> move(sequence, from, to);
            }
        }
        return new Layout.Plan(sequence, favour);
    }

    private static void move(int[] sequence, int from, int to) {
        int held = sequence[from];
        if (from < to)
            System.arraycopy(sequence, from + 1, sequence, from, to - from);
        else
            System.arraycopy(sequence, to, sequence, to + 1, from - to);
        sequence[to] = held;
    }
}
