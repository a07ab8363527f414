package spoonfall.score.report;

/** How the report looks, by day and by night. */
final class ReportStyle {
    static final String CSS = """
            :root { color-scheme: light dark; --ground: #fff; --ink: #222; --soft: #666; --grid: #ddd; --gel: #a4480a;
              --monitor: #0b62a8; --line: #8a5a00; --parabola: #7a3f9d; --bad: #b00020; --window: #f6e3cf; }
            @media (prefers-color-scheme: dark) { :root { --ground: #17191c; --ink: #e6e6e6; --soft: #a8a8a8;
              --grid: #3a3d42; --gel: #f0a060; --monitor: #6db7f2; --line: #e0b050; --parabola: #c79be8;
              --bad: #ff7a85; --window: #3a2c1e; } }
            body { background: var(--ground); color: var(--ink); font: 16px/1.5 system-ui, sans-serif; margin: 0; }
            main { max-width: 60rem; margin: 0 auto; padding: 1rem; }
            h2 { margin-top: 2.5rem; }
            .wide { overflow-x: auto; }
            table { border-collapse: collapse; }
            th, td { padding: 0.25rem 0.7rem; text-align: right; border-bottom: 1px solid var(--grid);
              font-variant-numeric: tabular-nums; }
            th:first-child, td:first-child { text-align: left; white-space: nowrap; }
            figure { margin: 1.5rem 0; }
            figcaption { color: var(--soft); font-size: 0.9rem; }
            .pair { display: grid; grid-template-columns: repeat(auto-fit, minmax(18rem, 1fr)); gap: 1rem; }
            svg { width: 100%; height: auto; }
            svg text { font-size: 11px; fill: var(--soft); }
            .frame { fill: none; stroke: var(--grid); }
            .grid { stroke: var(--grid); }
            line.gel { stroke: var(--gel); }
            .window { fill: var(--window); }
            line.truth { stroke: var(--soft); stroke-dasharray: 2 3; }
            svg text.truth { font-size: 10px; }
            .reading, .forecast, .method { fill: none; stroke: var(--monitor); stroke-width: 1.5; }
            .interval { stroke: var(--monitor); stroke-opacity: 0.25; stroke-width: 2; }
            circle.alarm, svg text.alarm { fill: var(--bad); }
            circle.error { fill: var(--monitor); fill-opacity: 0.6; }
            circle.error.outside { fill: var(--bad); }
            .dashed { stroke-dasharray: 5 4; }
            path.line { stroke: var(--line); }
            path.parabola { stroke: var(--parabola); }
            b.monitor, th.monitor { color: var(--monitor); }
            b.line, th.line { color: var(--line); }
            b.parabola, th.parabola { color: var(--parabola); }
            b.outside { color: var(--bad); }
            """;

    private ReportStyle() {}
}
