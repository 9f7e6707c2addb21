package pourwright.geometry;

import java.util.Locale;

/** The rim of a mask of squares as the path of a drawing, with straight runs made one. */
final class MaskOutline {
    /** Steps right, up, left, down. */
    private static final int[] DX = {1, 0, -1, 0};

    private static final int[] DY = {0, 1, 0, -1};

    private final boolean[] mask;
    private final int width;
    private final int height;
    private final boolean[] done;

    private MaskOutline(boolean[] mask, int width, int height) {
        this.mask = mask;
        this.width = width;
        this.height = height;
        this.done = new boolean[4 * (width + 1) * (height + 1)];
    }

    /**
     * The path, upside down as drawings count.
     *
     * @param left  where the mask's left edge is drawn
     * @param base  where its bottom edge is drawn
     * @param size  how large a square is drawn
     */
    static String path(boolean[] mask, int width, int height, double left, double base, double size) {
        MaskOutline outline = new MaskOutline(mask, width, height);
        StringBuilder out = new StringBuilder();
        for (int y = 0; y <= height; y++) {
            for (int x = 0; x < width; x++) {
                // A rim that runs right has the mask above it and nothing below.
                if (outline.isRim(x, y, 0) && !outline.done[outline.at(x, y, 0)]) {
                    outline.loop(x, y, out, left, base, size);
                }
            }
        }
        return out.toString();
    }

    private int at(int x, int y, int way) {
        return 4 * (y * (width + 1) + x) + way;
    }

    private boolean filled(int x, int y) {
        return x >= 0 && y >= 0 && x < width && y < height && mask[y * width + x];
    }

    /** Whether the rim leaves a corner this way with the mask on its left. */
    private boolean isRim(int x, int y, int way) {
        return switch (way) {
            case 0 -> filled(x, y) && !filled(x, y - 1);
            case 1 -> filled(x - 1, y) && !filled(x, y);
            case 2 -> filled(x - 1, y - 1) && !filled(x - 1, y);
            default -> filled(x, y - 1) && !filled(x - 1, y - 1);
        };
    }

    private void loop(int startX, int startY, StringBuilder out, double left, double base, double size) {
        int x = startX;
        int y = startY;
        int way = 0;
        boolean first = true;
        do {
            int run = 0;
            int heading = way;
            out.append(first ? "M" : "L")
                    .append(number(left + x * size))
                    .append(' ')
                    .append(number(base - y * size));
            first = false;
            while (way == heading && !done[at(x, y, way)]) {
                done[at(x, y, way)] = true;
                x += DX[way];
                y += DY[way];
                run++;
                way = turn(x, y, way);
            }
            if (run == 0) {
                break;
            }
        } while (x != startX || y != startY);
        out.append('Z');
    }

    /** Left first, so that squares that meet at a corner only are drawn apart. */
    private int turn(int x, int y, int way) {
        for (int side : new int[] {1, 0, 3}) {
            int next = (way + side) % 4;
            if (isRim(x, y, next)) {
                return next;
            }
        }
        return way;
    }

    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
