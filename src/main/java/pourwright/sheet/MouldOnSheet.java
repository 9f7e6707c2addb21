package pourwright.sheet;

import java.util.List;
import java.util.Optional;

/**
 * How a mould stands and what it needs, for a sheet.
 *
 * @param lines which way is up, each vent with its place, what else is done about trapped air
 * @param picture the mould with its vents as an SVG element, where there is a mesh
 */
public record MouldOnSheet(List<String> lines, Optional<String> picture) {
    public MouldOnSheet {
        lines = List.copyOf(lines);
    }
}
