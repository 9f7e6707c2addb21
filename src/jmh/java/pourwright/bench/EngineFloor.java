package pourwright.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;

/**
 * The least a start with the rule engine can cost: a base of the rule packages whose names begin with the argument, one
 * session, and nothing else. With an argument that fits none, it is the engine without a rule.
 */
public final class EngineFloor {
    private EngineFloor() {}

    /** Builds one base and one session. */
    public static void main(String[] args) throws IOException, ReflectiveOperationException {
        List<Model> models = new ArrayList<>();
        try (InputStream in = EngineFloor.class
                .getClassLoader()
                .getResourceAsStream("META-INF/kie/pourwright/pourwright/drools-model")) {
            for (String name : new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(String::strip)
                    .filter(l -> l.startsWith(args[0]))
                    .toList()) {
                models.add(Class.forName(name)
                        .asSubclass(Model.class)
                        .getDeclaredConstructor()
                        .newInstance());
            }
        }
        KieBase base = KieBaseBuilder.createKieBaseFromModel(models);
        KieSession session = base.newKieSession();
        session.dispose();
    }
}
