package pourwright.knowledge;

/**
 * Where a number or a rule comes from.
 *
 * @param title title, or the words "common practice"
 * @param author author or publisher, or null
 * @param year year or years, or null
 * @param where chapter, table or page, or null
 * @param read true when the text itself was opened, false when it is cited from memory
 * @param note anything to know about it, or null
 */
public record Source(String title, String author, String year, String where, Boolean read, String note) {}
