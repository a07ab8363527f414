package spoonfall.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import spoonfall.cli.door.DevicesCommand;
import spoonfall.cli.lab.EvaluateCommand;
import spoonfall.cli.lab.ScienceCommand;
import spoonfall.cli.lab.SimulateCommand;
import spoonfall.cli.learn.DiagnoseCommand;
import spoonfall.cli.learn.LearnCommand;
import spoonfall.cli.log.BackupCommand;
import spoonfall.cli.log.LogCommand;
import spoonfall.cli.option.CommandException;
import spoonfall.cli.option.Logging;
import spoonfall.cli.option.MisuseException;
import spoonfall.cli.plan.JarsCommand;
import spoonfall.cli.plan.PlanCommand;
import spoonfall.cli.probe.CalibrateCommand;
import spoonfall.cli.probe.PortsCommand;
import spoonfall.cli.serve.DemoCommand;
import spoonfall.cli.serve.ReplayCommand;
import spoonfall.cli.serve.ServeCommand;
import spoonfall.cli.serve.WarmUpCommand;

/** The program {@code spoonfall}: finds the command and runs it. */
@Command(
        name = "spoonfall",
        description = "Watches a pan of marmalade, jam or jelly climb to its setting point, and says when to act.",
        mixinStandardHelpOptions = true,
        scope = ScopeType.INHERIT,
        versionProvider = Main.Version.class,
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {
            DemoCommand.class,
            ServeCommand.class,
            PortsCommand.class,
            CalibrateCommand.class,
            LogCommand.class,
            LearnCommand.class,
            DiagnoseCommand.class,
            BackupCommand.class,
            DevicesCommand.class,
            ReplayCommand.class,
            SimulateCommand.class,
            ScienceCommand.class,
            EvaluateCommand.class,
            JarsCommand.class,
            PlanCommand.class,
            LicencesCommand.class,
            WarmUpCommand.class
        })
public final class Main implements Runnable {
    private static final int USAGE = 2;
    private static final int FAILURE = 1;

    @Option(
            names = {"-v", "--verbose"},
            scope = ScopeType.INHERIT,
            description = "Say more, with stack traces.")
    private boolean verbose;

    /** Runs the command that {@code args} names and exits with its code: 0 done, 1 failed, 2 misused. */
    public static void main(String[] args) {
        System.exit(run(writer(System.out), writer(System.err), args));
    }

    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
    }

    /** Runs a command and returns its exit code. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        Main main = new Main();
        CommandLine line = new CommandLine(main);
        line.setOut(out);
        line.setErr(err);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setUsageHelpAutoWidth(true);
        Misunderstood.refuseNumbers(line);
        line.setExecutionStrategy(parsed -> {
            Logging.configure(main.verbose);
            return new CommandLine.RunLast().execute(parsed);
        });
        line.setParameterExceptionHandler((e, arguments) -> {
            CommandLine at = e.getCommandLine();
            String name = at.getCommandSpec().qualifiedName();
            at.getErr().println(name + ": " + firstLine(Misunderstood.words(e)) + " (" + name + " --help)");
            return USAGE;
        });
        line.setExecutionExceptionHandler((e, at, parsed) -> {
            boolean misused = e instanceof MisuseException;
            boolean expected = misused || e instanceof CommandException || e instanceof IllegalArgumentException;
            String hint = expected || main.verbose ? "" : " (--verbose says more)";
            at.getErr().println(at.getCommandSpec().qualifiedName() + ": " + oneLine(e) + hint);
            if (main.verbose) {
                e.printStackTrace(at.getErr());
            }
            return misused ? USAGE : FAILURE;
        });
        return line.execute(args);
    }

    @Override
    public void run() {
        CommandLine.usage(this, System.out);
    }

    private static String oneLine(Exception e) {
        return firstLine(e.getMessage() == null ? e.toString() : e.getMessage());
    }

    private static String firstLine(String message) {
        return message.lines().findFirst().orElse("");
    }

    /** The version of the program, from its jar. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            String version = Main.class.getPackage().getImplementationVersion();
            return new String[] {"spoonfall " + (version == null ? "(not built)" : version)};
        }
    }
}
