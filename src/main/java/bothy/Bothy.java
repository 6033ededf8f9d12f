package bothy;

public final class Bothy {
    public static void main(String[] args) {
        System.out.println("Bothy");
    }
}
