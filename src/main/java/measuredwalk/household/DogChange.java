package measuredwalk.household;

import java.util.List;

import org.jspecify.annotations.Nullable;

/**
 * A change to a dog's plan or medicines. What is null stays as it is.
 *
 * @param planMinutes minutes of each walk
 * @param walksPerDay walks a day
 * @param minMinutes the least minutes to suggest
 * @param maxMinutes the most minutes to suggest
 * @param medications all kinds of medicine that it gets from now on
 */
public record DogChange(@Nullable Double planMinutes, @Nullable Integer walksPerDay, @Nullable Double minMinutes,
		@Nullable Double maxMinutes, @Nullable List<String> medications) {

	boolean changesPlan() {
		return this.planMinutes != null || this.walksPerDay != null || this.minMinutes != null
				|| this.maxMinutes != null;
	}

}
