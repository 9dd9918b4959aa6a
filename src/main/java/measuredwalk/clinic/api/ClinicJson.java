package measuredwalk.clinic.api;

import measuredwalk.signs.Coded;
import org.springframework.boot.jackson.autoconfigure.JsonMapperBuilderCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.StdSerializer;

/** Words of the vocabulary stand in JSON by their codes. */
@Configuration(proxyBeanMethods = false)
class ClinicJson {

	@Bean
	JsonMapperBuilderCustomizer codes() {
		return (builder) -> builder.addModule(new SimpleModule("codes").addSerializer(Coded.class, new CodeWriter()));
	}

	private static final class CodeWriter extends StdSerializer<Coded> {

		private CodeWriter() {
			super(Coded.class);
		}

		@Override
		public void serialize(Coded word, JsonGenerator generator, SerializationContext context) {
			generator.writeString(word.code());
		}

	}

}
