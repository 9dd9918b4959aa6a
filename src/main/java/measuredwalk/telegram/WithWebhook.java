package measuredwalk.telegram;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

import org.springframework.context.annotation.Condition;
import org.springframework.context.annotation.ConditionContext;
import org.springframework.context.annotation.Conditional;
import org.springframework.core.type.AnnotatedTypeMetadata;
import org.springframework.util.StringUtils;

/** Only there when updates are to be sent to us. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@WithToken
@Conditional(WithWebhook.AddressIsSet.class)
@interface WithWebhook {

	/** Looks at the setting. */
	class AddressIsSet implements Condition {

		@Override
		public boolean matches(ConditionContext context, AnnotatedTypeMetadata metadata) {
			return StringUtils.hasText(context.getEnvironment().getProperty("measuredwalk.telegram.webhook-url"));
		}

	}

}
