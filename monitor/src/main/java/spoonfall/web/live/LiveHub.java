package spoonfall.web.live;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.jetty.websocket.api.Session;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.canner.CannerDesk;
import spoonfall.kitchen.told.KitchenChange;
import spoonfall.kitchen.told.KitchenListener;
import spoonfall.kitchen.told.KitchenState;
import spoonfall.kitchen.told.PanView;
import spoonfall.web.jars.JarViews;
import spoonfall.web.view.Views;
import spoonfall.web.wire.WireJson;

/** All pages on the live channel of one pan. Each message is made once, on the kitchen's thread, and handed to every page. */
final class LiveHub implements KitchenListener {
    private final Kitchen kitchen;
    private final Snapshots snapshots;
    private final PanBoard board;
    private final LiveCounts counts;
    private final WaitingPages waiting;
    private final Map<Session, LiveClient> clients = new ConcurrentHashMap<>();
    private String latestJars = "";

    /** What a page that comes now is sent first; empty when something has changed since it was made. */
    private volatile String latestSnapshot = "";

    LiveHub(Kitchen kitchen, Snapshots snapshots, PanBoard board, LiveCounts counts, WaitingPages waiting) {
        this.kitchen = kitchen;
        this.snapshots = snapshots;
        this.board = board;
        this.counts = counts;
        this.waiting = waiting;
        board.tell(this::pans);
    }

    /** A page came: it gets the snapshot, then every change. */
    void join(Session session) {
        LiveClient client = new LiveClient(session, counts);
        Runnable ended = waiting.begin(client);
        kitchen.withState(state -> {
            ended.run();
            if (session.isOpen()) {
                board.between(() -> {
                    if (latestSnapshot.isEmpty()) {
                        latestSnapshot = WireJson.text(snapshots.of(state));
                    }
                    client.change(latestSnapshot);
                    clients.put(session, client);
                });
                tellJars(client);
            }
        });
    }

    /** How the jars stand, by the canner's thread: the latest counts, and every page hears it in order. */
    synchronized void jars(CannerDesk.News news) {
        latestJars = WireJson.text(JarViews.of(news));
        clients.values().forEach(client -> client.change(latestJars));
    }

    private synchronized void tellJars(LiveClient client) {
        if (!latestJars.isEmpty()) {
            client.change(latestJars);
        }
    }

    /** A page went. */
    void leave(Session session) {
        kitchen.withState(state -> clients.remove(session));
    }

    /** How many pages there are. */
    int size() {
        return clients.size();
    }

    @Override
    public void begin(KitchenState state) {
        latestSnapshot = "";
        if (!clients.isEmpty()) {
            board.between(() -> {
                String text = WireJson.text(snapshots.of(state));
                clients.values().forEach(client -> client.change(text));
            });
        }
    }

    /** Another pan may need the cook: told by the board, on any pan's thread. */
    private void pans(String text) {
        latestSnapshot = "";
        clients.values().forEach(client -> client.change(text));
    }

    @Override
    public void changed(KitchenChange change) {
        latestSnapshot = "";
        if (!clients.isEmpty()) {
            String text = WireJson.text(Views.change(change));
            clients.values().forEach(client -> client.change(text));
        }
    }

    @Override
    public void pan(PanView view) {
        latestSnapshot = "";
        if (!clients.isEmpty()) {
            String text = WireJson.text(Views.status(view));
            clients.values().forEach(client -> client.status(text, view.heardNanos()));
        }
    }
}
