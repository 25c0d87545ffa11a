/** Orders: what is on its way and when, what a box that fell short means, and what each supplier's record says. */
import { lengthRange, shortDay } from '../format.ts';
import { Layout } from '../layout.tsx';
import { nameOf, preyName } from '../names.ts';
import { ordersHeadline } from '../order-words.ts';
import { paths } from '../paths.ts';
import { BoxPart } from './orders-box.tsx';
import { OnItsWay } from './orders-coming.tsx';
import { CameOrders } from './orders-past.tsx';
import { SenderRecords } from './orders-senders.tsx';
import type { OrdersProps } from './orders-shown.ts';

export const OrdersPage = (props: OrdersProps) => (
  <Layout shell={props.shell} title="Orders" here="more">
    <header class="page-head">
      <h1>{ordersHeadline(props)}</h1>
      <p class="acts">
        {props.sellers ? (
          <a class="button" href={paths.newOrder}>
            Write an order down
          </a>
        ) : (
          <a class="button" href={paths.newSupplier}>
            Add who you buy from
          </a>
        )}
        {props.sellers ? (
          <a class="button quiet" href={paths.bulk}>
            How many to order
          </a>
        ) : null}
        <a class="button quiet" href={paths.suppliers}>
          Suppliers
        </a>
        <a class="button quiet" href={`${paths.larder}#deliveries`}>
          Single deliveries
        </a>
      </p>
    </header>
    {props.boxes.map((box) => (
      <BoxPart {...props} box={box} />
    ))}
    {props.coming.length === 0 ? null : (
      <section aria-labelledby="coming">
        <h2 id="coming">On its way</h2>
        <ul class="deliveries">
          {props.coming.map((order) => (
            <OnItsWay {...props} order={order} />
          ))}
        </ul>
      </section>
    )}
    <Singles {...props} />
    <CameOrders {...props} />
    <SenderRecords {...props} />
  </Layout>
);

/** Deliveries expected without an order are seen to in the larder. */
const Singles = ({ singles, names, unit }: OrdersProps) =>
  singles.length === 0 ? null : (
    <section aria-labelledby="singles">
      <h2 id="singles">Expected by itself</h2>
      <ul class="lines">
        {singles.map(({ species, lot, day, bin }) => (
          <li>
            <span>
              {shortDay(day)}: {lot.heads} {preyName(names.species, species, lot.heads)},{' '}
              {lengthRange(lot.fromMm, lot.toMm, unit)}, for {nameOf(names.bins, bin)}
            </span>
            <a href={`${paths.larder}#deliveries`}>It came, or is not coming</a>
          </li>
        ))}
      </ul>
    </section>
  );
