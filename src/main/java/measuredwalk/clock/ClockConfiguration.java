package measuredwalk.clock;

import java.time.Clock;
import java.time.Duration;

import org.springframework.boot.autoconfigure.condition.ConditionalOnMissingBean;
import org.springframework.boot.autoconfigure.condition.ConditionalOnBooleanProperty;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.jdbc.core.simple.JdbcClient;

@Configuration(proxyBeanMethods = false)
class ClockConfiguration {

	/**
	 * How far it was ahead survives a restart: the journal must not lie in the future.
	 */
	@Bean
	@ConditionalOnBooleanProperty("measuredwalk.rehearsal")
	RehearsalClock rehearsalClock(JdbcClient database) {
		database.sql("insert into rehearsal_clock (id, ahead_millis) values (1, 0) on conflict do nothing").update();
		long millis = database.sql("select ahead_millis from rehearsal_clock where id = 1").query(Long.class).single();
		return new RehearsalClock(Clock.systemUTC(), Duration.ofMillis(millis));
	}

	@Bean
	@ConditionalOnMissingBean(Clock.class)
	Clock clock() {
		return Clock.systemUTC();
	}

}
