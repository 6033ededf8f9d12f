package bothy.reading.text;

/** How far two spellings are apart: letters left out, put in, changed, or two neighbours swapped (Damerau 1964). */
final class Nearness {
    private Nearness() {}

    /** The number of slips between two words, or {@code limit + 1} when there are more than {@code limit}. */
    static int slips(String a, String b, int limit) {
        if (Math.abs(a.length() - b.length()) > limit) {
            return limit + 1;
        }
        int[] before = new int[b.length() + 1];
        int[] above = new int[b.length() + 1];
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            row[0] = i;
            int least = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(change, Math.min(above[j], row[j - 1]) + 1);
                if (swapped(a, b, i, j)) {
                    row[j] = Math.min(row[j], before[j - 2] + 1);
                }
                least = Math.min(least, row[j]);
            }
            if (least > limit) {
                return limit + 1;
            }
            int[] spare = before;
            before = above;
            above = row;
            row = spare;
        }
        return Math.min(above[b.length()], limit + 1);
    }

    private static boolean swapped(String a, String b, int i, int j) {
        return i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    }
}
