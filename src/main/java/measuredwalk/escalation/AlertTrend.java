package measuredwalk.escalation;

import java.time.LocalDate;
import java.util.List;

import measuredwalk.household.Dog;
import measuredwalk.pictures.Picture;
import measuredwalk.pictures.TrendDay;
import measuredwalk.pictures.TrendPicture;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** The picture of the days before an alert. */
@Component
public class AlertTrend {

	private static final int DAYS = 28;

	private final BurdenDays burden;

	AlertTrend(BurdenDays burden) {
		this.burden = burden;
	}

	/**
	 * The worst sign and the minutes of each of the four weeks' days until an alert. In a
	 * transaction of its own, so that a picture that cannot be had takes nothing back of
	 * what it was wanted for.
	 * @param alert the alert
	 * @param dog its dog
	 * @return the picture
	 */
	@Transactional(readOnly = true, propagation = Propagation.REQUIRES_NEW)
	public Picture of(Alert alert, Dog dog) {
		LocalDate raisedOn = alert.raisedAt().atZone(dog.household().timeZone()).toLocalDate();
		List<TrendDay> days = this.burden.of(dog, raisedOn, DAYS)
			.stream()
			.map((day) -> new TrendDay(day.date(), day.told(), day.grade(), day.minutes()))
			.toList();
		return TrendPicture.of(dog.name(), days, raisedOn);
	}

}
