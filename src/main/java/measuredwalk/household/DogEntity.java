package measuredwalk.household;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;

import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "dog")
class DogEntity {

	@Id
	private UUID id;

	@ManyToOne(fetch = FetchType.EAGER, optional = false)
	@JoinColumn(name = "household_id")
	private HouseholdEntity household;

	private String name;

	private @Nullable Double weightKg;

	private @Nullable Double ageYears;

	private boolean fullyGrown;

	private @Nullable LocalDate surgeryDate;

	private String walkTimes;

	private boolean walkTimesTold;

	private LocalDate enrolledOn;

	private Instant enrolledAt;

	@Version
	private long version;

	protected DogEntity() {
	}

	DogEntity(HouseholdEntity household, NewDog dog, LocalDate enrolledOn, Instant enrolledAt) {
		this.id = UUID.randomUUID();
		this.household = household;
		this.name = dog.name();
		this.weightKg = dog.weightKg();
		this.ageYears = dog.ageYears();
		this.fullyGrown = dog.fullyGrown();
		this.surgeryDate = dog.surgeryDate();
		this.walkTimes = joined(dog.walkTimes());
		this.enrolledOn = enrolledOn;
		this.enrolledAt = enrolledAt;
	}

	private static String joined(List<LocalTime> times) {
		return times.stream().map(LocalTime::toString).collect(Collectors.joining(","));
	}

	/** The household itself says when its dog walks. */
	void walksAt(List<LocalTime> times) {
		this.walkTimes = joined(times);
		this.walkTimesTold = true;
	}

	UUID id() {
		return this.id;
	}

	HouseholdEntity household() {
		return this.household;
	}

	Dog view(Plan plan, List<String> medications) {
		List<LocalTime> times = Arrays.stream(this.walkTimes.split(","))
			.filter((time) -> !time.isEmpty())
			.map(LocalTime::parse)
			.toList();
		return new Dog(this.id, this.household.view(), this.name, this.weightKg, this.ageYears, this.fullyGrown,
				this.surgeryDate, plan, times, this.walkTimesTold, medications, this.enrolledOn, this.enrolledAt,
				this.version);
	}

}
