package measuredwalk.escalation.delivery;

import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;

import measuredwalk.escalation.Alert;
import measuredwalk.escalation.AlertTrend;
import measuredwalk.escalation.Alerts;
import measuredwalk.household.Households;
import measuredwalk.messaging.MessagePicture;
import measuredwalk.messaging.PictureSource;
import org.springframework.stereotype.Component;

/**
 * The days before an alert, for staff chats. It is drawn when it is sent; where it cannot
 * be, the words go alone.
 */
@Component
class AlertPictures implements PictureSource {

	private static final String KIND = "alert-trend";

	private static final Pattern NUMBER = Pattern.compile("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");

	/** Pixels for each unit of the drawing: sharp on a phone. */
	private static final double SCALE = 2;

	private final Alerts alerts;

	private final Households households;

	private final AlertTrend trend;

	AlertPictures(Alerts alerts, Households households, AlertTrend trend) {
		this.alerts = alerts;
		this.households = households;
		this.trend = trend;
	}

	/**
	 * The picture that goes with an alert.
	 * @param alert the alert
	 * @param inWords what it shows
	 * @return its name and its words
	 */
	static MessagePicture of(Alert alert, String inWords) {
		return new MessagePicture(KIND + "/" + alert.id(), inWords);
	}

	@Override
	public String kind() {
		return KIND;
	}

	@Override
	public Optional<byte[]> png(String name) {
		if (!NUMBER.matcher(name).matches()) {
			return Optional.empty();
		}
		return this.alerts.one(UUID.fromString(name))
			.flatMap((alert) -> this.households.dog(alert.dogId()).map((dog) -> this.trend.of(alert, dog).png(SCALE)));
	}

}
