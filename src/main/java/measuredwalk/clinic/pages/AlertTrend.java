package measuredwalk.clinic.pages;

import java.time.LocalDate;
import java.util.List;

import measuredwalk.escalation.Alert;
import measuredwalk.escalation.BurdenDays;
import measuredwalk.household.Dog;
import measuredwalk.pictures.Picture;
import measuredwalk.pictures.TrendDay;
import measuredwalk.pictures.TrendPicture;
import org.springframework.stereotype.Component;

/** The picture of the days before an alert. */
@Component
class AlertTrend {

	private static final int DAYS = 28;

	private final BurdenDays burden;

	AlertTrend(BurdenDays burden) {
		this.burden = burden;
	}

	Picture of(Alert alert, Dog dog) {
		LocalDate raisedOn = alert.raisedAt().atZone(dog.household().timeZone()).toLocalDate();
		List<TrendDay> days = this.burden.of(dog, raisedOn, DAYS)
			.stream()
			.map((day) -> new TrendDay(day.date(), day.told(), day.grade(), day.minutes()))
			.toList();
		return TrendPicture.of(dog.name(), days, raisedOn);
	}

}
