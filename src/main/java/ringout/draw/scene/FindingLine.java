package ringout.draw.scene;

/**
 * A line of the finding list on the sheet.
 *
 * @param number the number in the badges
 * @param kind the shape of the badges
 * @param waived accepted by a waiver
 * @param code the check, such as {@code T07}
 * @param title the finding in one line
 */
public record FindingLine(int number, BadgeKind kind, boolean waived, String code, String title) {}
