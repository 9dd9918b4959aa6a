package measuredwalk.escalation;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.TimeGauge;
import io.micrometer.core.instrument.binder.MeterBinder;
import org.springframework.stereotype.Component;

/** How many alerts nobody has acknowledged yet, and for how long. */
@Component
class AlertMeters implements MeterBinder {

	private final AlertRows rows;

	private final Clock clock;

	AlertMeters(AlertRows rows, Clock clock) {
		this.rows = rows;
		this.clock = clock;
	}

	@Override
	public void bindTo(MeterRegistry registry) {
		for (AlertLevel level : AlertLevel.values()) {
			Gauge.builder("measuredwalk.alerts.open", () -> open(level).size())
				.tag("level", level.code())
				.description("Alerts that nobody has acknowledged")
				.register(registry);
			TimeGauge.builder("measuredwalk.alerts.oldest", () -> age(open(level)).toMillis(), TimeUnit.MILLISECONDS)
				.tag("level", level.code())
				.description("Age of the oldest alert that nobody has acknowledged")
				.register(registry);
		}
	}

	private List<Instant> open(AlertLevel level) {
		return this.rows.raisedAt(AlertStatus.OPEN, level);
	}

	private Duration age(List<Instant> raised) {
		return raised.stream()
			.min(Comparator.naturalOrder())
			.map((first) -> Duration.between(first, this.clock.instant()))
			.orElse(Duration.ZERO);
	}

}
