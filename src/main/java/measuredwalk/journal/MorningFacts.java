package measuredwalk.journal;

import java.time.LocalDate;
import java.util.List;

import measuredwalk.signs.Overall;
import measuredwalk.signs.Sign;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a morning and the night before it. What was not said is null.
 *
 * @param date the morning's day, in the household's zone
 * @param stiffMinutes minutes that stiffness took to ease
 * @param overall how the dog was against its own usual
 * @param signs signs seen and signs denied
 * @param unsure paths of fields that nobody is sure of
 */
public record MorningFacts(LocalDate date, @Nullable Double stiffMinutes, @Nullable Overall overall, List<Sign> signs,
		List<String> unsure) {

	public MorningFacts {
		signs = List.copyOf(signs);
		unsure = List.copyOf(unsure);
	}

	/**
	 * The same morning with other signs.
	 * @param right all signs
	 * @return the changed facts
	 */
	public MorningFacts withSigns(List<Sign> right) {
		return new MorningFacts(this.date, this.stiffMinutes, this.overall, right, this.unsure);
	}

}
