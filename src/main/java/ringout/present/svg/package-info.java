/**
 * Sheets as SVG 1.1 text. One user unit is one millimetre. Colours, widths and fonts are presentation attributes, without
 * style sheets, variables or media queries, so that every renderer shows the same.
 *
 * <p>What a page or a test can rely on: {@code class} is one of {@code unit plug pin splice reference wire move casing
 * label badge ghost}; {@code data-unit data-plug data-pin data-wire data-net data-kind data-from data-to data-severity
 * data-target} name what it is; every such group has a {@code title}.
 */
@NullMarked
package ringout.present.svg;

import org.jspecify.annotations.NullMarked;
