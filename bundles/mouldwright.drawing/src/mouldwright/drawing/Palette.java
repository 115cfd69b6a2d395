package mouldwright.drawing;

/** Which colour each tone is, red, green and blue by bytes. Blue and sand are told apart by people who do not tell red from green. */
public enum Palette {
    /** Dark on paper. */
    PAPER(0xffffff, new int[] {0x23241f, 0x6b6d66, 0xb9bab2, 0x1b1c18, 0x2f6ea5, 0x1f4e79, 0xa8854a, 0x9aa39b, 0x4f81ad, 0x1f4e79, 0xe6e6de, 0x8a6420, 0x7a3e12}),
    /** Light on a dark screen. */
    DARK(0x1f2123, new int[] {0xe8e6de, 0xa5a79f, 0x5c5f61, 0xf4f2ea, 0x8fb8de, 0x9cc3e6, 0xd9b87c, 0x8f9a92, 0x7fa9cf, 0x5f93c4, 0x55585a, 0xe3b778, 0xe89a5b});

    private final int ground;
    private final int[] tones;

    Palette(int ground, int[] tones) {
        this.ground = ground;
        this.tones = tones;
    }

    /** What lies under a drawing. */
    public int ground() {
        return ground;
    }

    /** The colour of a tone. */
    public int of(Tone tone) {
        return tones[tone.ordinal()];
    }
}
