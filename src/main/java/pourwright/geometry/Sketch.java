package pourwright.geometry;

import java.util.Locale;

/** A view from the front in plain characters, one line for each height, at most 80 columns wide. */
final class Sketch {
    private static final int WIDE = 64;
    private static final int HIGH = 32;
    /** A character is about twice as high as wide. */
    private static final double TALL = 2;

    private static final String MARKS = "123456789abcdefghijklmnopqrstuvwxyz";

    private Sketch() {}

    static String of(Mesh mesh, Setup setup, Trapped trapped, Frame frame) {
        double[] a = SideView.range(mesh, frame.right);
        double[] h = SideView.range(mesh, frame.up);
        double step = Math.max((a[1] - a[0]) / WIDE, (h[1] - h[0]) / HIGH / TALL);
        SideView view = new SideView(mesh, frame, frame.right, step, TALL * step);
        char[] picture = new char[view.width * view.height];
        boolean[] body = view.body(mesh);
        for (int i = 0; i < picture.length; i++) {
            picture[i] = body[i] ? '.' : ' ';
        }
        for (Pocket pocket : trapped.whole()) {
            boolean[] mask = view.pocket(trapped, pocket);
            char mark = mark(pocket.id());
            for (int i = 0; i < picture.length; i++) {
                picture[i] = mask[i] ? mark : picture[i];
            }
        }
        for (Vec3 vent : setup.vents()) {
            put(picture, view, vent.minus(mesh.origin), 'V');
        }
        if (trapped.gate() != null) {
            put(picture, view, trapped.gate().minus(mesh.origin), 'G');
        }
        return lines(picture, view, mesh.origin.dot(frame.up)) + legend(mesh, setup, trapped);
    }

    private static char mark(int pocket) {
        return pocket <= MARKS.length() ? MARKS.charAt(pocket - 1) : '*';
    }

    private static void put(char[] picture, SideView view, Vec3 at, char mark) {
        int x = Math.min(view.width - 1, Math.max(0, (int) view.x(at)));
        int y = Math.min(view.height - 2, Math.max(1, (int) Math.floor(view.y(at) - 1e-9)));
        picture[y * view.width + x] = mark;
    }

    private static String lines(char[] picture, SideView view, double base) {
        StringBuilder out = new StringBuilder();
        for (int row = view.height - 2; row >= 1; row--) {
            String squares = new String(picture, row * view.width, view.width).stripTrailing();
            double height = (view.heightOfRow(row) + base) * 1000;
            out.append(
                    String.format(Locale.ROOT, "%9.1f |%s%n", height, squares).replace("\r", ""));
        }
        return out.toString();
    }

    private static String legend(Mesh mesh, Setup setup, Trapped trapped) {
        StringBuilder out = new StringBuilder("height mm   . ");
        out.append(setup.domain() == Domain.CAVITY ? "cavity" : "master");
        out.append(trapped.gate() == null ? "" : "   G gate");
        out.append(setup.vents().isEmpty() ? "" : "   V vent");
        out.append(mesh.simple ? "" : "   (columns)").append('\n');
        for (Pocket pocket : trapped.whole()) {
            out.append("  ").append(mark(pocket.id())).append("  trapped ").append(Picture.volume(pocket.volumeM3()));
            out.append(String.format(Locale.ROOT, ", sealed at %.1f mm%n", pocket.saddleHeightM() * 1000)
                    .replace("\r", ""));
        }
        return out.toString();
    }
}
