package mouldwright.geometry.plane;

/** Order of figures by size, equal ones as they come. */
final class Order {
    private Order() { }

    /** The places of the figures from the least to the greatest. Rings run up and down, so they come in runs: merging from
     *  below finds little to do. */
    static int[] of(double[] figures) {
        int n = figures.length;
        int[] order = new int[n], spare = new int[n];
        for (int i = 0; i < n; i++)
            order[i] = i;
        for (int width = 1; width < n; width *= 2) {
            for (int from = 0; from < n; from += 2 * width)
                merge(figures, order, spare, from, Math.min(from + width, n), Math.min(from + 2 * width, n));
            int[] swap = order;
            order = spare;
            spare = swap;
        }
        return order;
    }

    private static void merge(double[] figures, int[] from, int[] to, int low, int middle, int high) {
        int a = low, b = middle;
        for (int k = low; k < high; k++)
            to[k] = a < middle && (b >= high || figures[from[a]] <= figures[from[b]]) ? from[a++] : from[b++];
    }
}
