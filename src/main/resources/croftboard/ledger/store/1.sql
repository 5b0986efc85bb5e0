-- Read by SQLite and PostgreSQL alike. Entries are only ever added.
CREATE TABLE booking (
  number BIGINT PRIMARY KEY,
  booked_at TEXT NOT NULL,
  who TEXT NOT NULL,
  command TEXT NOT NULL,
  name TEXT NOT NULL,
  fingerprint TEXT NOT NULL UNIQUE
);

CREATE TABLE entry (
  id BIGINT PRIMARY KEY,
  booking BIGINT NOT NULL REFERENCES booking (number),
  line BIGINT NOT NULL,
  kind TEXT NOT NULL,
  day TEXT NOT NULL,
  corrects BIGINT UNIQUE REFERENCES entry (id),
  why TEXT NOT NULL
);
CREATE INDEX entry_by_day ON entry (kind, day);
CREATE INDEX entry_by_booking ON entry (booking);

CREATE TABLE receipt (
  entry BIGINT PRIMARY KEY REFERENCES entry (id),
  vendor TEXT NOT NULL,
  order_id TEXT NOT NULL,
  what TEXT NOT NULL,
  words TEXT NOT NULL,
  item TEXT NOT NULL,
  pack TEXT NOT NULL,
  ordered_1000 BIGINT,
  came_1000 BIGINT NOT NULL,
  rejected_1000 BIGINT NOT NULL,
  mg BIGINT NOT NULL,
  price_cents BIGINT NOT NULL,
  cents BIGINT NOT NULL,
  instead_of TEXT NOT NULL,
  tenths_f BIGINT,
  grown TEXT NOT NULL,
  made TEXT NOT NULL,
  local_part TEXT NOT NULL,
  note TEXT NOT NULL
);

CREATE TABLE sale (
  entry BIGINT PRIMARY KEY REFERENCES entry (id),
  hour_of_day BIGINT,
  code TEXT NOT NULL,
  words TEXT NOT NULL,
  dish TEXT NOT NULL,
  ours TEXT NOT NULL,
  units_1000 BIGINT NOT NULL,
  cents BIGINT NOT NULL
);

CREATE TABLE left_over (
  entry BIGINT PRIMARY KEY REFERENCES entry (id),
  week TEXT NOT NULL,
  slot TEXT NOT NULL,
  service_line TEXT NOT NULL,
  dish TEXT NOT NULL,
  planned BIGINT NOT NULL,
  prepared_1000 BIGINT,
  sold_1000 BIGINT,
  left_1000 BIGINT,
  ran_out_at TEXT NOT NULL,
  note TEXT NOT NULL
);

CREATE TABLE waste (
  entry BIGINT PRIMARY KEY REFERENCES entry (id),
  dish TEXT NOT NULL,
  item TEXT NOT NULL,
  words TEXT NOT NULL,
  portions_1000 BIGINT NOT NULL,
  mg BIGINT NOT NULL,
  reason TEXT NOT NULL,
  cents BIGINT NOT NULL,
  note TEXT NOT NULL
);

CREATE TABLE stock_count (
  entry BIGINT PRIMARY KEY REFERENCES entry (id),
  item TEXT NOT NULL,
  words TEXT NOT NULL,
  amount TEXT NOT NULL,
  mg BIGINT NOT NULL,
  cents BIGINT NOT NULL
);

CREATE TABLE batch_yield (
  entry BIGINT PRIMARY KEY REFERENCES entry (id),
  recipe TEXT NOT NULL,
  batches TEXT NOT NULL,
  expected_mg BIGINT NOT NULL,
  got_mg BIGINT NOT NULL
);

CREATE TABLE credit (
  entry BIGINT PRIMARY KEY REFERENCES entry (id),
  vendor TEXT NOT NULL,
  receipt BIGINT,
  step TEXT NOT NULL,
  cents BIGINT NOT NULL,
  reason TEXT NOT NULL
);

CREATE TABLE overriding (
  entry BIGINT PRIMARY KEY REFERENCES entry (id),
  service_line TEXT NOT NULL,
  dish TEXT NOT NULL,
  forecast_1000 BIGINT,
  portions_1000 BIGINT NOT NULL,
  reason TEXT NOT NULL
);

CREATE TABLE transfer (
  entry BIGINT PRIMARY KEY REFERENCES entry (id),
  way TEXT NOT NULL,
  place TEXT NOT NULL,
  what TEXT NOT NULL,
  portions_1000 BIGINT NOT NULL,
  mg BIGINT NOT NULL,
  cents BIGINT NOT NULL
);

CREATE TABLE label_read (
  entry BIGINT PRIMARY KEY REFERENCES entry (id),
  receipt BIGINT NOT NULL,
  contains TEXT NOT NULL,
  others_known TEXT NOT NULL,
  words TEXT NOT NULL
);

CREATE TABLE withdrawal (
  entry BIGINT PRIMARY KEY REFERENCES entry (id)
);
