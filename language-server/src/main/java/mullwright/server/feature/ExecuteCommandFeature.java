package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.ServiceLoader;
import java.util.TreeMap;
import mullwright.server.Client;
import mullwright.server.Command;
import mullwright.server.CommandSource;
import mullwright.server.Desk;
import mullwright.server.Feature;
import mullwright.server.Route;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;

/**
 * Runs what an editor asks for by name.
 *
 * <p>Answers {@code workspace/executeCommand} (LSP 3.17). Every {@link Command} is found by itself
 * and works without arguments; two of one name fail at start.
 */
@AutoService(Feature.class)
public final class ExecuteCommandFeature implements Feature {
  private final Map<String, Command> commands = new TreeMap<>();

  /** With all commands there are. */
  public ExecuteCommandFeature() {
    for (CommandSource source :
        ServiceLoader.load(CommandSource.class, CommandSource.class.getClassLoader())) {
      for (Command command : source.commands()) {
        if (commands.put(command.name(), command) != null) {
          throw new IllegalStateException("two commands are called " + command.name());
        }
      }
    }
  }

  @Override
  public List<Route<?>> routes() {
    return List.of(new Route<>("workspace/executeCommand", ExecuteCommandParams.class, this::run));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    JsonArray names = new JsonArray();
    commands.keySet().forEach(names::add);
    JsonObject options = new JsonObject();
    options.add("commands", names);
    options.addProperty("workDoneProgress", true);
    server.add("executeCommandProvider", options);
  }

  private Object run(ExecuteCommandParams parameters, Desk desk) {
    String name = Route.needed(parameters.getCommand(), "command");
    Command command = commands.get(name);
    if (command == null) {
      throw new ResponseErrorException(
          new ResponseError(
              ResponseErrorCode.InvalidParams,
              "There is no command '"
                  + name
                  + "'. There are: "
                  + String.join(", ", commands.keySet())
                  + ".",
              null));
    }
    return command.run(arguments(parameters.getArguments()), desk);
  }

  private static List<JsonElement> arguments(List<Object> sent) {
    List<JsonElement> arguments = new ArrayList<>();
    if (sent != null) {
      // the wire reads what has no type of its own as JSON
      sent.forEach(argument -> arguments.add((JsonElement) argument));
    }
    return List.copyOf(arguments);
  }
}
