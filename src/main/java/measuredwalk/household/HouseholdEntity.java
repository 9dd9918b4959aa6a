package measuredwalk.household;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import measuredwalk.speech.Speech;
import measuredwalk.speech.Units;

@Entity
@SuppressWarnings("UnusedVariable") // Columns that are written for the record and read by
									// SQL only.
@Table(name = "household")
class HouseholdEntity {

	@Id
	private UUID id;

	private String timeZone;

	private LocalTime morningAt;

	private LocalTime quietFrom;

	private LocalTime quietUntil;

	private String daysOff;

	private boolean walkQuestions;

	private boolean fortnightPicture;

	private String speech;

	private String units;

	private boolean saysVet;

	private Instant createdAt;

	protected HouseholdEntity() {
	}

	HouseholdEntity(ZoneId timeZone, Instant createdAt) {
		this.id = UUID.randomUUID();
		this.timeZone = timeZone.getId();
		this.createdAt = createdAt;
		keep(Hours.usual());
		speak(Speech.usual());
	}

	UUID id() {
		return this.id;
	}

	/** From now on these hours hold. */
	final void keep(Hours hours) {
		this.morningAt = hours.morningAt();
		this.quietFrom = hours.quietFrom();
		this.quietUntil = hours.quietUntil();
		this.daysOff = hours.daysOff().stream().sorted().map(DayOfWeek::name).collect(Collectors.joining(","));
		this.walkQuestions = hours.walkQuestions();
		this.fortnightPicture = hours.fortnightPicture();
	}

	/** From now on its people are spoken to like this. */
	final void speak(Speech chosen) {
		this.speech = chosen.tag();
		this.units = chosen.units().code();
		this.saysVet = chosen.vet();
	}

	Household view() {
		Set<DayOfWeek> days = Arrays.stream(this.daysOff.split(","))
			.filter((name) -> !name.isEmpty())
			.map(DayOfWeek::valueOf)
			.collect(Collectors.toSet());
		return new Household(this.id, ZoneId.of(this.timeZone),
				new Hours(this.morningAt, this.quietFrom, this.quietUntil, days, this.walkQuestions,
						this.fortnightPicture),
				new Speech(this.speech, Units.of(this.units).orElse(Units.KILOMETRES), this.saysVet));
	}

}
