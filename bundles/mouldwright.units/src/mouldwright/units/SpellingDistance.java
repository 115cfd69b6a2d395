package mouldwright.units;

/** How far a mistyped word is from a spelling: two for each letter added, lost, changed or swapped, one for its case
 * or for a forgotten division sign. */
public final class SpellingDistance {

    private SpellingDistance() { }

    /** Twice the count of slips; see the class. */
    public static int between(String typed, String spelling) {
        int[][] cost = new int[typed.length() + 1][spelling.length() + 1];
        for (int i = 0; i <= typed.length(); i++) {
            for (int j = 0; j <= spelling.length(); j++) {
                if (j == 0) {
                    cost[i][j] = 2 * i;
                    continue;
                }
                int forgotten = cost[i][j - 1] + (spelling.charAt(j - 1) == '/' ? 1 : 2);
                cost[i][j] = i == 0 ? forgotten : Math.min(Math.min(cost[i - 1][j] + 2, forgotten),
                        cost[i - 1][j - 1] + change(typed.charAt(i - 1), spelling.charAt(j - 1)));
                if (i > 1 && j > 1 && typed.charAt(i - 1) == spelling.charAt(j - 2)
                        && typed.charAt(i - 2) == spelling.charAt(j - 1)) {
                    cost[i][j] = Math.min(cost[i][j], cost[i - 2][j - 2] + 2);
                }
            }
        }
        return cost[typed.length()][spelling.length()];
    }

    private static int change(char a, char b) {
        if (a == b) {
            return 0;
        }
        return Character.toLowerCase(a) == Character.toLowerCase(b) ? 1 : 2;
    }
}
