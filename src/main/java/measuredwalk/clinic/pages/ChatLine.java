package measuredwalk.clinic.pages;

/**
 * A staff chat in a list; public for the templates only.
 *
 * @param id its number
 * @param words its channel and since when it gets alerts
 */
public record ChatLine(long id, String words) {
}
