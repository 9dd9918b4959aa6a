package measuredwalk.clinic;

import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

import org.springframework.boot.test.context.SpringBootTest;

/** The whole application on a port of its own, with an empty database in memory. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@Inherited
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
		properties = { "measuredwalk.rehearsal=true", "management.prometheus.metrics.export.enabled=true",
				"spring.datasource.url=jdbc:h2:mem:clinic;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;"
						+ "DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_DELAY=-1" })
public @interface RunningClinic {

}
