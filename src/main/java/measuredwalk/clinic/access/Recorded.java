package measuredwalk.clinic.access;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What a request does, for the record of who saw and changed what. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
public @interface Recorded {

	/**
	 * What is seen or done, in words that follow a person's name.
	 * @return such as 'saw the journal'
	 */
	String value();

}
