-- A cook is its inputs: going through them again gives the same cook. Readings lie in chunks of about a minute,
-- for a row of its own would take each of them ten times the room.
CREATE TABLE cook (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  key TEXT NOT NULL UNIQUE,          -- drawn at random by the run that began it, so that writing twice is harmless
  pan TEXT NOT NULL,
  number INTEGER NOT NULL,           -- counts the cooks of a pan
  started_ms INTEGER NOT NULL,       -- wall clock at the first reading, Unix milliseconds
  header TEXT NOT NULL,              -- JSON
  alive_ms INTEGER NOT NULL,         -- milliseconds of the cook up to which it was watched
  alive_wall_ms INTEGER NOT NULL,    -- the wall clock then
  alive_boot TEXT NOT NULL,          -- which run of the operating system that was; empty if it does not say
  alive_uptime_ms INTEGER NOT NULL,  -- how long that one had run then
  ended_ms INTEGER,                  -- milliseconds of the cook at which it was over
  thinned INTEGER NOT NULL DEFAULT 0 -- readings that were thinned out
);

CREATE INDEX cook_of_pan ON cook (pan, id);

CREATE TABLE chunk (
  cook INTEGER NOT NULL REFERENCES cook (id) ON DELETE CASCADE,
  first INTEGER NOT NULL,            -- number of its first reading, from 0
  count INTEGER NOT NULL,
  readings BLOB NOT NULL,            -- see ReadingCodec
  PRIMARY KEY (cook, first)
) WITHOUT ROWID;

CREATE TABLE word (
  cook INTEGER NOT NULL REFERENCES cook (id) ON DELETE CASCADE,
  n INTEGER NOT NULL,
  after INTEGER NOT NULL,            -- how many readings came before it
  taken_ms INTEGER NOT NULL,         -- milliseconds of the cook
  kind TEXT NOT NULL,
  detail TEXT NOT NULL,              -- JSON
  PRIMARY KEY (cook, n)
) WITHOUT ROWID;

CREATE TABLE event (
  cook INTEGER NOT NULL REFERENCES cook (id) ON DELETE CASCADE,
  n INTEGER NOT NULL,
  at_ms INTEGER NOT NULL,            -- milliseconds of the cook
  kind TEXT NOT NULL,
  detail TEXT NOT NULL,              -- JSON
  PRIMARY KEY (cook, n)
) WITHOUT ROWID;
