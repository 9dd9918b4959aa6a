package measuredwalk.telegram;

import java.util.List;

/**
 * A message that the bot sent to the stand-in.
 *
 * @param messageId its number
 * @param chatId the chat
 * @param text what it says; the caption when it is a photo
 * @param photo the photo's file, or null when it is none
 * @param document the file that it brings, or null when it brings none
 * @param fileName what that file is called
 * @param buttons what its buttons carry, in order
 * @param labels what its buttons say, in order
 * @param sender the path that the sender put behind the stand-in's own address
 * @param nanos when it came, on the machine's own clock
 */
record StandInMessage(int messageId, long chatId, String text, byte[] photo, byte[] document, String fileName,
		List<String> buttons, List<String> labels, String sender, long nanos) {
}
