package mouldwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import mouldwright.exchange.mesh.LoftMesh;
import mouldwright.exchange.mesh.MeshFiles;
import mouldwright.exchange.mesh.MeshOrder;
import mouldwright.exchange.mesh.TriangleMesh;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.stage.ShapeMeasures;
import mouldwright.project.SafeWrite;
import mouldwright.project.WriteResult;
import mouldwright.report.PathNames;
import mouldwright.services.ProcessIo;
import mouldwright.services.SpecSession;
import mouldwright.units.Unit;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Writes the lofted surface as triangles, closed all round. */
final class MeshCommand implements Subcommand {

    /** Finer than a plug is ever made, metres. */
    private static final double FINEST = 1e-5;

    @Override
    public String name() {
        return "mesh";
    }

    @Override
    public String summary() {
        return "write the lofted surface as triangles, STL or OBJ";
    }

    @Override
    public void describe(CommandSpec spec) {
        spec.addOption(Options.choice("--format", "stl|obj", "binary STL, or OBJ; else as the file's name ends", List.of("stl", "obj")));
        spec.addOption(Options.text("--out", "FILE", "where to; a crash leaves the old one whole"));
        spec.addOption(Options.choice("--surface", "finished|plate|part", "the finished plug; the foam and plates under skin and surfacer; or the part as stated, "
                + "without shrink. Else finished", List.of("finished", "plate", "part")));
        spec.addOption(Options.text("--tolerance", "LENGTH", "how far triangles may leave the surface; else 0.5mm"));
        spec.addOption(Options.choice("--units", "mm|m|in", "unit of the figures, which neither format keeps; else mm", List.of("mm", "m", "in")));
        spec.addOption(Options.text("--plug", "NAME", "which plug, where the file has several"));
        spec.addPositional(Options.parameter(0, "FILE", "a spec"));
    }

    @Override
    public int run(ParseResult parsed, ProcessIo io) {
        Path file = Paths.of(parsed.matchedPositionalValue(0, ""), io);
        Path target = Options.value(parsed, "--out").map(written -> Paths.of(written, io)).orElseThrow(() -> new WrongUsage("--out FILE says where the mesh goes"));
        String format = format(Options.value(parsed, "--format"), target);
        Unit unit = Lengths.unit("--units", Options.value(parsed, "--units").orElse("mm"));
        double tolerance = Options.value(parsed, "--tolerance").map(written -> Lengths.of("--tolerance", written)).orElse(5e-4);
        if (tolerance < FINEST)
            throw new WrongUsage("--tolerance is 0.01mm at least");
        return switch (PlugChoice.of(SpecSession.start().check(file, () -> false), Options.value(parsed, "--plug"), io)) {
            case PlugChoice.None(int code) -> code;
            case PlugChoice.Chosen(BuildPlan plan) -> {
                TriangleMesh mesh = mesh(plan, Options.value(parsed, "--surface").orElse("finished"), tolerance);
                yield write(mesh, plan.plug(), format, unit, target, io);
            }
        };
    }

    private static String format(Optional<String> stated, Path target) {
        String name = target.toString().toLowerCase(Locale.ROOT);
        if (name.endsWith(".plug"))
            throw new WrongUsage("--out would write over a spec: " + target.getFileName());
        return stated.or(() -> List.of("stl", "obj").stream().filter(format -> name.endsWith("." + format)).findFirst())
                .orElseThrow(() -> new WrongUsage("say --format stl or obj, or let the file's name end so"));
    }

    private static TriangleMesh mesh(BuildPlan plan, String surface, double tolerance) {
        ShapeMeasures shape = plan.measurements().find(ShapeMeasures.class).orElseThrow(() -> new IllegalStateException("a plan without errors has a shape"));
        return switch (surface) {
            case "part" -> LoftMesh.of(shape.part(), MeshOrder.plain(tolerance));
            case "plate" -> LoftMesh.of(shape.plug(), new MeshOrder(tolerance, shape.buildUp(), plan.spec().body().forward().moulded() ? shape.endBuildUp() : 0,
                    plan.spec().body().aft().moulded() ? shape.endBuildUp() : 0));
            default -> LoftMesh.of(shape.plug(), MeshOrder.plain(tolerance));
        };
    }

    private static int write(TriangleMesh mesh, String plug, String format, Unit unit, Path target, ProcessIo io) {
        byte[] bytes = format.equals("stl") ? MeshFiles.stl(mesh, plug, unit) : MeshFiles.obj(mesh, plug, unit);
        String name = new PathNames(io.directory()).of(target);
        return switch (SafeWrite.bytes(target, bytes)) {
            case WriteResult.Written written -> {
                io.out().print(String.format(Locale.ROOT, "%s: %d triangles, closed, in %s; %.0f by %.0f by %.0f mm, %.4f m3%n", name, mesh.triangles(), unit.symbol(),
                        mesh.extent(0) * 1000, mesh.extent(1) * 1000, mesh.extent(2) * 1000, mesh.volume()).replace("\r", ""));
                yield ExitCode.FINE;
            }
            case WriteResult.NotWritten(Path path, String message) -> {
                io.err().print("mouldwright: " + name + " is not written: " + message + "\n");
                yield ExitCode.FILE;
            }
        };
    }
}
