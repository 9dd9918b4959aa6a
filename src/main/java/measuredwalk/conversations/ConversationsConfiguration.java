package measuredwalk.conversations;

import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.io.ResourceLoader;

@Configuration(proxyBeanMethods = false)
class ConversationsConfiguration {

	@Bean
	ConversationFiles conversationFiles(ResourceLoader loader, @Value("${measuredwalk.conversations:}") String folder) {
		return new ConversationFiles(loader, folder);
	}

	@Bean
	Tongues tongues(ConversationFiles files) {
		return Tongues.read(files);
	}

	@Bean
	Scripts scripts(ConversationFiles files) {
		return Scripts.read(files);
	}

	@Bean
	Replies replies(ConversationFiles files) {
		return Replies.read(files);
	}

	@Bean
	Ideas ideas(ConversationFiles files) {
		return Ideas.read(files);
	}

	@Bean
	LookingGuide lookingGuide(ConversationFiles files) {
		return LookingGuide.read(files);
	}

}
