package pourwright.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A drawing of a mould in its attitude: two views from the side at right angles, with pockets, vents, gate and what they
 * hold as text. It needs no other file, and nothing in it is told by colour alone.
 */
public final class Picture {
    private static final int PANEL = 420;
    private static final int MARGIN = 50;
    private static final int LINE = 20;
    private static final int SQUARES = 210;
    /** Pockets beyond this many are summed in one line. */
    private static final int MOST_LISTED = 20;

    private final Mesh mesh;
    private final Setup setup;
    private final Trapped trapped;
    private final Frame frame;
    private final StringBuilder out = new StringBuilder();

    private Picture(Mesh mesh, Setup setup, Trapped trapped) {
        this.mesh = mesh;
        this.setup = setup;
        this.trapped = trapped;
        this.frame = new Frame(mesh.xyz, setup.up());
    }

    /**
     * Draws.
     *
     * @param mesh    the cavity or the master
     * @param setup   as given to {@link Pockets#find}
     * @param trapped what it gave
     * @return the text of an SVG file
     */
    public static String svg(Mesh mesh, Setup setup, Trapped trapped) {
        return new Picture(mesh, setup, trapped).draw();
    }

    private String draw() {
        double[] a = SideView.range(mesh, frame.right);
        double[] b = SideView.range(mesh, frame.ahead);
        double[] h = SideView.range(mesh, frame.up);
        double longest = Math.max(h[1] - h[0], Math.max(a[1] - a[0], b[1] - b[0]));
        double step = longest / SQUARES;
        SideView front = new SideView(mesh, frame, frame.right, step, step);
        SideView side = new SideView(mesh, frame, frame.ahead, step, step);
        double size = (double) (PANEL - 2 * MARGIN) / (SQUARES + 2);
        double base = MARGIN + front.height * size + LINE;
        List<String> lines = lines();
        int width = 2 * PANEL;
        double bottom = base + 2 * LINE + (lines.size() + 1) * LINE;
        out.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %.0f\" width=\"%d\" height=\"%.0f\""
                        + " role=\"img\" aria-labelledby=\"title desc\" font-family=\"sans-serif\" font-size=\"13\">\n",
                width,
                bottom,
                width,
                bottom));
        out.append("<title id=\"title\">").append(headline()).append("</title>\n<desc id=\"desc\">");
        lines.forEach(line -> out.append(line).append(' '));
        out.append("</desc>\n<defs><pattern id=\"hatch\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\""
                + " patternTransform=\"rotate(45)\"><rect width=\"6\" height=\"6\" fill=\"#fff\"/>"
                + "<path d=\"M0 0V6\" stroke=\"#000\" stroke-width=\"2\"/></pattern></defs>\n");
        out.append("<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n");
        view(front, "From the front", 0, base, size);
        view(side, "From the right side", PANEL, base, size);
        double y = base + 2.5 * LINE;
        text(MARGIN, y, headline(), " font-weight=\"bold\"");
        for (String line : lines) {
            y += LINE;
            text(MARGIN, y, line, "");
        }
        return out.append("</svg>\n").toString();
    }

    private void view(SideView view, String name, double shift, double base, double size) {
        double left = shift + MARGIN;
        text(left, MARGIN / 2.0 + 4, name, "");
        arrow(shift + MARGIN / 2.0, base);
        path(view.body(mesh), view, left, base, size, "fill=\"#d8d8d8\" stroke=\"#444\"");
        List<Pocket> whole = trapped.whole();
        for (Pocket pocket : whole) {
            path(
                    view.pocket(trapped, pocket),
                    view,
                    left,
                    base,
                    size,
                    "fill=\"url(#hatch)\" stroke=\"#000\" stroke-width=\"1.5\"");
        }
        for (Pocket pocket : whole) {
            Vec3 peak = pocket.peak().minus(mesh.origin);
            mark(left + view.x(peak) * size, base - view.y(peak) * size, String.valueOf(pocket.id()), "circle");
        }
        int number = 0;
        for (Vec3 vent : setup.vents()) {
            Vec3 at = vent.minus(mesh.origin);
            mark(left + view.x(at) * size, base - view.y(at) * size, "V" + ++number, "triangle");
        }
        if (trapped.gate() != null) {
            Vec3 at = trapped.gate().minus(mesh.origin);
            mark(left + view.x(at) * size, base - view.y(at) * size, "G", "square");
        }
    }

    private void path(boolean[] mask, SideView view, double left, double base, double size, String style) {
        out.append("<path fill-rule=\"evenodd\" ")
                .append(style)
                .append(" d=\"")
                .append(MaskOutline.path(mask, view.width, view.height, left, base, size))
                .append("\"/>\n");
    }

    private void arrow(double x, double base) {
        out.append(String.format(
                Locale.ROOT,
                "<path d=\"M%.1f %.1fV%.1fM%.1f %.1fl5 -10l5 10\" fill=\"none\" stroke=\"#000\" stroke-width=\"2\"/>\n",
                x,
                base,
                base - 60,
                x - 5,
                base - 50));
        text(x - 8, base - 66, "up", "");
    }

    private void mark(double x, double y, String label, String shape) {
        String body = switch (shape) {
            case "triangle" -> String.format(Locale.ROOT, "<path d=\"M%.1f %.1fl7 -13h-14z\"", x, y);
            case "square" ->
                String.format(Locale.ROOT, "<rect x=\"%.1f\" y=\"%.1f\" width=\"10\" height=\"10\"", x - 5, y - 5);
            default -> String.format(Locale.ROOT, "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"5\"", x, y);
        };
        out.append(body).append(" fill=\"#fff\" stroke=\"#000\" stroke-width=\"2\"/>\n");
        text(x + 8, y - 6, label, " font-weight=\"bold\" stroke=\"#fff\" stroke-width=\"4\" paint-order=\"stroke\"");
    }

    private void text(double x, double y, String words, String style) {
        out.append(String.format(Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\"%s>%s</text>\n", x, y, style, words));
    }

    private String headline() {
        if (trapped.noOutlet()) {
            return setup.vents().isEmpty() ? "No outlet: nothing can fill" : "Without the vents nothing can fill";
        }
        int count = trapped.whole().size();
        return count == 0
                ? "No trapped air"
                : String.format(
                        Locale.ROOT,
                        "Trapped air: %d %s, %s together",
                        count,
                        count == 1 ? "pocket" : "pockets",
                        volume(trapped.trappedM3()));
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        List<Pocket> whole = trapped.whole();
        for (Pocket pocket : whole.subList(0, Math.min(MOST_LISTED, whole.size()))) {
            lines.add(String.format(
                    Locale.ROOT,
                    "Circle %d (hatched): pocket of %s, sealed at height %.1f mm, top at %.1f mm.",
                    pocket.id(),
                    volume(pocket.volumeM3()),
                    pocket.saddleHeightM() * 1000,
                    pocket.peakHeightM() * 1000));
        }
        if (whole.size() > MOST_LISTED) {
            lines.add("And " + (whole.size() - MOST_LISTED) + " smaller pockets.");
        }
        int number = 0;
        for (Vec3 vent : setup.vents()) {
            lines.add(String.format(
                    Locale.ROOT, "Triangle V%d: vent at height %.1f mm.", ++number, vent.dot(frame.up) * 1000));
        }
        if (trapped.gate() != null) {
            lines.add(String.format(
                    Locale.ROOT,
                    "Square G: gate at height %.1f mm%s.",
                    Math.round(trapped.gate().dot(frame.up) * 10_000) / 10.0,
                    trapped.gateAssumed() ? " (assumed: the lowest point)" : ""));
        }
        return lines;
    }

    /** A volume in the unit a caster would use. */
    static String volume(double cubicMetres) {
        double millilitres = cubicMetres * 1e6;
        return millilitres >= 0.1
                ? String.format(Locale.ROOT, "%.3g mL", millilitres)
                : String.format(Locale.ROOT, "%.3g mm\u00b3", millilitres * 1000);
    }

    /** The same as plain text, at most 80 columns wide, from the top down. */
    public static String text(Mesh mesh, Setup setup, Trapped trapped) {
        Picture picture = new Picture(mesh, setup, trapped);
        return Sketch.of(mesh, setup, trapped, picture.frame) + picture.headline() + ".\n";
    }
}
