package pourwright.knowledge;

/**
 * A kind of vacuum pump.
 *
 * @param name what the trade calls it
 * @param speed usual free-air speed
 * @param ultimate what it reaches in shop use
 * @param vapour how well it tolerates vapour
 * @param note what to know
 * @param source a key of the sources
 */
public record PumpKind(String name, Value speed, Value ultimate, String vapour, String note, String source) {}
