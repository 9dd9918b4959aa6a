package measuredwalk.journal;

import java.time.LocalDate;

/**
 * Something told of a dog that is neither a walk nor a morning, in the owner's own words.
 *
 * @param topic what it is about
 * @param date the day that it is about, in the household's zone
 * @param said the words, who said them and when
 */
public record Note(NoteTopic topic, LocalDate date, Said said) {
}
