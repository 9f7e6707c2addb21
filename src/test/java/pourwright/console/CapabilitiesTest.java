package pourwright.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.jline.utils.InfoCmp;
import org.jline.utils.InfoCmp.Capability;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Our reading of the library's tables comes to what its own reading comes to. */
class CapabilitiesTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "dumb",
                "ansi",
                "xterm",
                "xterm-256color",
                "screen",
                "screen-256color",
                "rxvt",
                "rxvt-unicode",
                "rxvt-unicode-256color",
                "windows",
                "windows-256color",
                "windows-vtp"
            })
    void itIsWhatTheLibraryReads(String type) {
        Set<Capability> bools = EnumSet.noneOf(Capability.class);
        Map<Capability, Integer> ints = new EnumMap<>(Capability.class);
        Map<Capability, String> strings = new EnumMap<>(Capability.class);
        Set<Capability> theirBools = EnumSet.noneOf(Capability.class);
        Map<Capability, Integer> theirInts = new EnumMap<>(Capability.class);
        Map<Capability, String> theirStrings = new EnumMap<>(Capability.class);
        String text = InfoCmp.getDefaultInfoCmp(type);
        assertThat(Capabilities.known(type, bools, ints, strings)).isEqualTo(text != null);
        InfoCmp.parseInfoCmp(text == null ? "" : text, theirBools, theirInts, theirStrings);
        assertThat(bools).isEqualTo(theirBools);
        assertThat(ints).isEqualTo(theirInts);
        assertThat(strings).isEqualTo(theirStrings);
        if (type.startsWith("xterm")) {
            assertThat(strings).hasSizeGreaterThan(100);
        }
    }

    @Test
    void aTypeNobodyKnowsAddsNothing() {
        Set<Capability> bools = EnumSet.noneOf(Capability.class);
        assertThat(Capabilities.known("no-such-terminal", bools, new EnumMap<>(Capability.class), Map.of()))
                .isFalse();
        assertThat(Capabilities.known(null, bools, new EnumMap<>(Capability.class), Map.of()))
                .isFalse();
        assertThat(bools).isEmpty();
    }
}
