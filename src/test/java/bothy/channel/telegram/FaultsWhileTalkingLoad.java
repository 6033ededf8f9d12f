package bothy.channel.telegram;

/** The same with 5,000 messages. Run by {@code mvn verify -Pload}. */
class FaultsWhileTalkingLoad extends FaultsWhileTalkingTest {
    @Override
    int messages() {
        return 5_000;
    }
}
