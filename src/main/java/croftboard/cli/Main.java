package croftboard.cli;

import croftboard.cli.screen.Page;
import java.io.IOException;
import java.io.PrintWriter;
import java.time.Clock;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.AutoComplete;
import picocli.CommandLine;

/** Where the program starts. Only the commands that an argument names are built, so that starting is fast. */
public final class Main {
    private Main() { }

    public static void main(String[] args) {
        Setting setting = new Setting(Clock.systemDefaultZone(), System.getenv(), Terminal.isThere(),
                StopSignal.CtrlC::new);
        Optional<String> ready = ReadyHelp.folder().flatMap(folder -> ReadyHelp.answer(folder, setting, args));
        if (ready.isPresent()) {
            System.out.print(ready.get());
            System.out.flush();
            return;
        }
        int code = commandLine(setting, Wiring.tools(), args).execute(args);
        System.out.flush();
        System.exit(code);
    }

    /** The program for these arguments. */
    static CommandLine commandLine(Setting setting, Tools tools, String... args) {
        CommandLine line = new CommandLine(new Root(setting, tools), Main::made);
        Map<String, Supplier<Object>> commands = commands(setting, tools);
        List<String> named = commands.keySet().stream().filter(Arrays.asList(args)::contains).toList();
        boolean all = named.isEmpty() || Arrays.asList(args).contains("help")
                || Arrays.asList(args).contains("generate-completion") || Arrays.asList(args).contains("man");
        (all ? commands.keySet() : named).forEach(name -> line.addSubcommand(name, commands.get(name).get()));
        if (all) {
            line.addSubcommand("help", new CommandLine.HelpCommand());
            line.addSubcommand("generate-completion", new AutoComplete.GenerateCompletion());
            line.addSubcommand("man", new ManCommand());
        }
        if (line.getSubcommands().containsKey("short")) {
            line.getSubcommands().get("short").getCommandSpec().usageMessage().footer(ShortCommand.grammar());
        }
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setUsageHelpWidth(Math.max(80, Math.min(132, setting.width())));
        line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        line.setParameterExceptionHandler(Main::wrongUse);
        line.setExecutionExceptionHandler(Main::failed);
        return line;
    }

    private static Map<String, Supplier<Object>> commands(Setting setting, Tools tools) {
        Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
        commands.put("check", () -> new CheckCommand(setting, tools));
        commands.put("plan", () -> new PlanCommand(setting, tools));
        commands.put("rotate", () -> new RotateCommand(setting, tools));
        commands.put("show", () -> new ShowCommand(setting, tools));
        commands.put("scale", () -> new ScaleCommand(setting, tools));
        commands.put("post", () -> new PostCommand(setting, tools));
        commands.put("short", () -> new ShortCommand(setting, tools));
        commands.put("surplus", () -> new SurplusCommand(setting, tools));
        commands.put("sent", () -> new SentCommand(setting, tools));
        commands.put("confirmed", () -> new ConfirmedCommand(setting, tools));
        commands.put("keep", () -> new KeepCommand(setting, tools));
        commands.put("release", () -> new ReleaseCommand(setting, tools));
        commands.put("why", () -> new WhyCommand(setting, tools));
        commands.put("why-not", () -> new WhyNotCommand(setting, tools));
        commands.put("clash", () -> new ClashCommand(setting, tools));
        commands.put("worth", () -> new WorthCommand(setting, tools));
        commands.put("exposure", () -> new ExposureCommand(setting, tools));
        commands.put("compare", () -> new CompareCommand(setting, tools));
        commands.put("paper", () -> new PaperCommand(setting, tools));
        commands.put("coverage", () -> new CoverageCommand(setting, tools));
        commands.put("notice", () -> new NoticeCommand(setting, tools));
        commands.put("reply", () -> new ReplyCommand(setting, tools));
        commands.put("season", () -> new SeasonCommand(setting, tools));
        commands.put("event", () -> new EventCommand(setting, tools));
        commands.put("learn", () -> new LearnCommand(setting, tools));
        commands.put("forecast", () -> new ForecastCommand(setting, tools));
        commands.put("backtest", () -> new BacktestCommand(setting, tools));
        commands.put("look-back", () -> new LookBackCommand(setting, tools));
        commands.put("share", () -> new ShareCommand(setting, tools));
        commands.put("report", () -> new ReportCommand(setting, tools));
        commands.put("food-cost", () -> new FoodCostCommand(setting, tools));
        commands.put("grower-season", () -> new GrowerSeasonCommand(setting, tools));
        commands.put("receive", () -> new ReceiveCommand(setting, tools));
        commands.put("sold", () -> new SoldCommand(setting, tools));
        commands.put("ledger", () -> new LedgerCommand(setting));
        commands.put("left", () -> new LeftCommand(setting, tools));
        commands.put("waste", () -> new WasteCommand(setting, tools));
        commands.put("count", () -> new CountCommand(setting, tools));
        commands.put("match", () -> new MatchCommand(setting, tools));
        return commands;
    }

    private static <K> K made(Class<K> type) throws Exception {
        return CommandLine.defaultFactory().create(type);
    }

    private static int wrongUse(CommandLine.ParameterException e, String[] args) {
        PrintWriter err = e.getCommandLine().getErr();
        err.println("croftboard: " + Page.plain(e.getMessage().replaceFirst("^Error: ", "")));
        if (!CommandLine.UnmatchedArgumentException.printSuggestions(e, err)) {
            err.println("Try: " + e.getCommandLine().getCommandSpec().qualifiedName() + " --help");
        }
        err.flush();
        return Exit.WRONG_USE;
    }

    private static int failed(Exception e, CommandLine line, CommandLine.ParseResult parsed) {
        PrintWriter err = line.getErr();
        if (e instanceof WrongUse wrong) {
            wrong.lines().forEach(l -> err.println(Page.plain(l)));
            err.flush();
            return Exit.WRONG_USE;
        }
        String why = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage().lines().findFirst().orElse("");
        err.println("croftboard: " + Page.plain(why) + (e instanceof java.io.UncheckedIOException || e instanceof IOException ? ""
                : " (a fault of our own; --trace prints where)"));
        if (parsed.originalArgs().contains("--trace")) {
            e.printStackTrace(err);
        }
        err.flush();
        return Exit.OUR_FAULT;
    }
}
