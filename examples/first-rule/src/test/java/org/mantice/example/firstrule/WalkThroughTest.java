package org.mantice.example.firstrule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ServiceLoader;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.mantice.rule.RuleProvider;

class WalkThroughTest {
    private static final Pattern QUOTED_FILE =
            Pattern.compile("`(src/[^`]+)`:\\n\\n```\\w*\\n(.*?)```", Pattern.DOTALL);

    static Stream<MatchResult> quotedFiles() throws IOException {
        return QUOTED_FILE.matcher(Files.readString(Path.of("README.md"))).results();
    }

    @ParameterizedTest
    @MethodSource("quotedFiles")
    void theWalkThroughQuotesTheRealCode(MatchResult quoted) throws IOException {
        assertThat(quoted.group(2)).isEqualTo(Files.readString(Path.of(quoted.group(1))));
    }

    @Test
    void theWalkThroughQuotesRulePackServiceTextsAndTest() throws IOException {
        assertThat(quotedFiles()).hasSize(5);
    }

    @Test
    void theServiceFileNamesThePack() {
        assertThat(ServiceLoader.load(RuleProvider.class)).hasAtLeastOneElementOfType(FirstRulePack.class);
    }
}
