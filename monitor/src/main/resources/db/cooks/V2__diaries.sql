-- What lies beside the cooks and outlasts them: jars from the canner to their seals, and afternoons. A diary is its lines.
CREATE TABLE diary (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  key TEXT NOT NULL UNIQUE,          -- drawn at random by the run that began it, so that writing twice is harmless
  subject TEXT NOT NULL,             -- such as "jars"; the newest of a subject is the one that goes on
  header TEXT NOT NULL,              -- JSON
  alive_ms INTEGER NOT NULL,         -- milliseconds of the diary up to which somebody was there to write
  alive_wall_ms INTEGER NOT NULL,    -- the wall clock then
  alive_boot TEXT NOT NULL,          -- which run of the operating system that was; empty if it does not say
  alive_uptime_ms INTEGER NOT NULL   -- how long that one had run then
);

CREATE INDEX diary_of ON diary (subject, id);

CREATE TABLE diary_line (
  diary INTEGER NOT NULL REFERENCES diary (id) ON DELETE CASCADE,
  n INTEGER NOT NULL,
  at_ms INTEGER NOT NULL,            -- milliseconds of the diary
  kind TEXT NOT NULL,
  detail TEXT NOT NULL,              -- JSON
  PRIMARY KEY (diary, n)
) WITHOUT ROWID;

-- What a cook wrote of a cook. Apart from its words, for it moves nothing, and may be written when the cook is long over.
CREATE TABLE note (
  cook INTEGER NOT NULL REFERENCES cook (id) ON DELETE CASCADE,
  key TEXT NOT NULL,                 -- who writes it again writes it once
  at_ms INTEGER NOT NULL,            -- milliseconds of the cook
  wall_ms INTEGER NOT NULL,          -- wall clock when it was written, Unix milliseconds
  text TEXT NOT NULL,
  PRIMARY KEY (cook, key)
) WITHOUT ROWID;

-- What was thinned out or deleted, and why: nothing goes silently.
CREATE TABLE upkeep (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  wall_ms INTEGER NOT NULL,
  kind TEXT NOT NULL,
  detail TEXT NOT NULL               -- JSON
);
