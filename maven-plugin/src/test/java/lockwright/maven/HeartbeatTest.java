package lockwright.maven;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;

class HeartbeatTest {
  @Test
  void a_long_silence_is_broken() throws InterruptedException {
    List<String> said = new CopyOnWriteArrayList<>();
    try (Heartbeat heartbeat = new Heartbeat(said::add, "Alder Fen", 1)) {
      heartbeat.accept("search");
      heartbeat.at("audit");
      long end = System.nanoTime() + 20_000_000_000L;
      while (said.size() < 2 && System.nanoTime() < end) {
        Thread.sleep(50);
      }
    }
    assertThat(said).startsWith("Alder Fen: search", "Alder Fen: still at: audit");
  }
}
