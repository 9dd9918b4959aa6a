package measuredwalk.records;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;

import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.journal.WalkFacts;
import measuredwalk.messaging.PictureSource;
import measuredwalk.pictures.FortnightPicture;
import measuredwalk.pictures.Picture;
import measuredwalk.pictures.PictureDay;
import measuredwalk.signs.Sign;
import measuredwalk.suggestions.DogDay;
import measuredwalk.suggestions.DogDays;
import measuredwalk.tolerance.Suggestion;
import measuredwalk.speech.Speaking;
import org.springframework.stereotype.Service;

/** Draws a dog's fortnight, from what the journal says when it is drawn. */
@Service
public class FortnightPictures implements PictureSource {

	private static final String KIND = "fortnight";

	private static final int DAYS = 14;

	/** Sharp on a telephone, and well below what channels take. */
	private static final double SCALE = 2.5;

	private final Households households;

	private final DogDays days;

	private final RecordWords words;

	FortnightPictures(Households households, DogDays days, RecordWords words) {
		this.households = households;
		this.days = days;
		this.words = words;
	}

	/**
	 * The name by which a message asks for a picture.
	 * @param dog the dog
	 * @param last the fortnight's last day
	 * @return the name
	 */
	public static String name(Dog dog, LocalDate last) {
		return KIND + "/" + dog.id() + "/" + last;
	}

	@Override
	public String kind() {
		return KIND;
	}

	@Override
	public Optional<byte[]> png(String name) {
		String[] parts = name.split("/", 2);
		LocalDate last = LocalDate.parse(parts[1]);
		return this.households.dog(UUID.fromString(parts[0]))
			.map((dog) -> Speaking.as(dog.household().speech(), () -> picture(dog, daysUntil(dog, last)).png(SCALE)));
	}

	/**
	 * The days of a fortnight; those before the dog was taken on are left out.
	 * @param dog the dog
	 * @param last the fortnight's last day
	 * @return the days, the last one last
	 */
	public List<DogDay> daysUntil(Dog dog, LocalDate last) {
		return this.days.of(dog, last.minusDays(DAYS - 1), last);
	}

	/**
	 * Draws days.
	 * @param dog the dog
	 * @param days the days in a row, at least one
	 * @return the picture
	 */
	public Picture picture(Dog dog, List<DogDay> days) {
		return FortnightPicture.of(dog.name(), days.stream().map(this::day).toList());
	}

	private PictureDay day(DogDay day) {
		Suggestion suggestion = day.suggestion();
		PictureDay.Morning morning = (day.morning() != null) ? PictureDay.Morning.valueOf(day.morning().name())
				: PictureDay.Morning.NOT_TOLD;
		return new PictureDay(day.date(),
				new PictureDay.Suggested(suggestion.walks(), suggestion.minutes(), suggestion.toleranceLow(),
						suggestion.toleranceMedian(), suggestion.toleranceHigh()),
				day.walks().stream().filter((walk) -> walk.minutes() != null).map(this::walk).toList(), morning,
				List.of());
	}

	private PictureDay.Walk walk(WalkFacts walk) {
		String signs = walk.signs()
			.stream()
			.filter(Sign::present)
			.map(this.words::sign)
			.collect(Collectors.joining("; "));
		return new PictureDay.Walk(Objects.requireNonNull(walk.minutes()), signs);
	}

}
