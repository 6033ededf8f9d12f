package bothy.channel.telegram;

/** The same with more messages. Run by {@code mvn verify -Pload}. */
class DatabaseTroubleLoad extends DatabaseTroubleTest {
    @Override
    int lines() {
        return 600;
    }
}
