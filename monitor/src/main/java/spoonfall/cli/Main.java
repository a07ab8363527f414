package spoonfall.cli;

/** Entry point of the program. */
public final class Main {
    private Main() {}

    /** Runs the command that {@code args} names and exits with its code. */
    public static void main(String[] args) {
        System.out.println("spoonfall");
    }
}
