package mouldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A process of its own, as the shell starts it: what it loads, and what it writes. */
class ColdStartTest {

    @TempDir
    private Path folder;

    private String java(List<String> options, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1"));
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")), "mouldwright.cli.Main"));
        command.addAll(List.of(arguments));
        Path out = folder.resolve("out.txt");
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile()).redirectOutput(out.toFile())
                .redirectError(folder.resolve("err.txt").toFile());
        builder.environment().put("LC_ALL", "C");
        builder.environment().remove("JAVA_TOOL_OPTIONS");
        builder.start().waitFor();
        return java.nio.file.Files.readString(out, StandardCharsets.UTF_8);
    }

    private List<String> classes(String... arguments) throws IOException, InterruptedException {
        Path log = folder.resolve("classes.txt");
        java(List.of("-Xlog:class+load=info:file=" + log), arguments);
        return java.nio.file.Files.readAllLines(log).stream().map(line -> line.substring(line.lastIndexOf("] ") + 2)).toList();
    }

    @Test void helpLoadsNothingOfTheLanguageNorOfAnyPlatform() throws Exception { // it has to be there at once
        assertThat(classes("help", "estimate")).anyMatch(line -> line.startsWith("picocli."))
                .noneMatch(line -> line.startsWith("org.eclipse.") || line.startsWith("org.osgi.") || line.startsWith("com.google."))
                .noneMatch(line -> line.startsWith("mouldwright.plan.") || line.startsWith("mouldwright.language."));
    }

    @Test void aCheckLoadsNoWindowsAndNoFramework() throws Exception {
        Specs.write(folder, "box.plug", Specs.BOX);
        assertThat(classes("check", "box.plug")).anyMatch(line -> line.startsWith("mouldwright.language."))
                .noneMatch(line -> line.startsWith("org.eclipse.swt.") || line.startsWith("org.eclipse.jface.") || line.startsWith("org.eclipse.ui."))
                .noneMatch(line -> line.startsWith("org.eclipse.osgi.") || line.startsWith("org.eclipse.core.internal.runtime."));
    }

    @Test void resultsAreUtf8WhateverTheLocale() throws Exception {
        Specs.write(folder, "box.plug", Specs.BOX.replace("station B", "station B\u00e9ta").replace("A box", "Eine Kiste f\u00fcr S\u00e4ge"));
        assertThat(java(List.of("-Dfile.encoding=ISO-8859-1"), "estimate", "box.plug")).startsWith("Box   Eine Kiste f\u00fcr S\u00e4ge\n").contains("A-B\u00e9ta");
    }
}
