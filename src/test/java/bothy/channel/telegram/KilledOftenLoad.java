package bothy.channel.telegram;

/** The same, often: more than 5,000 messages while the program is killed sixty times. Run by {@code mvn verify -Pload}. */
class KilledOftenLoad extends KilledWhileTalkingTest {
    @Override
    int kills() {
        return 60;
    }

    @Override
    int messagesALife() {
        return 90;
    }
}
