package measuredwalk.clinic.api;

import java.util.List;
import java.util.Locale;

import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.security.SecurityRequirement;
import io.swagger.v3.oas.models.security.SecurityScheme;
import org.springdoc.core.customizers.OpenApiCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The API's description at {@code /v3/api-docs}. */
@Configuration(proxyBeanMethods = false)
class ApiDescription {

	private static final String LOGIN = "staff";

	private static final String PROBLEM = "#/components/schemas/Problem";

	@Bean
	OpenAPI openApi() {
		return new OpenAPI()
			.info(new Info().title("Measured Walk for the clinic's own systems")
				.version("1")
				.description("Dogs, their journals and suggestions, and alerts. Times are ISO 8601."))
			.addSecurityItem(new SecurityRequirement().addList(LOGIN))
			.components(new Components().addSecuritySchemes(LOGIN,
					new SecurityScheme().type(SecurityScheme.Type.HTTP).scheme("basic")));
	}

	@Bean
	OpenApiCustomizer onlyTheApi() {
		return (api) -> {
			api.getPaths().keySet().removeIf((path) -> !path.startsWith("/api/"));
			api.getComponents().addSchemas("Problem", problem());
			api.getPaths()
				.values()
				.forEach((path) -> path.readOperations()
					.forEach((operation) -> operation.getResponses().addApiResponse("default", refusal())));
			api.getComponents().getSchemas().values().forEach(ApiDescription::codes);
		};
	}

	private static ApiResponse refusal() {
		return new ApiResponse().description("What went wrong, as problem details (RFC 9457)")
			.content(new Content().addMediaType("application/problem+json",
					new MediaType().schema(new Schema<>().$ref(PROBLEM))));
	}

	private static Schema<?> problem() {
		Schema<Object> schema = new Schema<>();
		schema.setType("object");
		for (String text : List.of("type", "title", "detail", "instance")) {
			schema.addProperty(text, new Schema<String>().type("string"));
		}
		schema.addProperty("status", new Schema<Integer>().type("integer"));
		return schema;
	}

	/** Words of the vocabulary stand in JSON by their codes, not by their Java names. */
	private static void codes(Schema<?> schema) {
		if (schema.getEnum() != null) {
			setCodes(schema);
		}
		if (schema.getItems() != null) {
			codes(schema.getItems());
		}
		if (schema.getProperties() != null) {
			schema.getProperties().forEach((name, property) -> codes(property));
		}
	}

	@SuppressWarnings("unchecked")
	private static void setCodes(Schema<?> schema) {
		List<String> codes = schema.getEnum()
			.stream()
			.map((name) -> String.valueOf(name).toLowerCase(Locale.ROOT).replace('_', '-'))
			.toList();
		((Schema<String>) schema).setEnum(codes);
	}

}
